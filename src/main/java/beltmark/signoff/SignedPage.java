package beltmark.signoff;

import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.recordbook.StoredEntry;
import beltmark.signoff.DemonstrationRecord.Measured;
import beltmark.signoff.DemonstrationRecord.Reading;
import beltmark.web.Page;
import beltmark.web.Told;
import beltmark.web.View;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was signed, read back from the record book.
 *
 * @param view what all pages share
 * @param entry the record
 * @param body what it says
 */
public record SignedPage(View view, StoredEntry entry, DemonstrationRecord body) implements Page {

    /** {@return where the board has it among the person's other records} */
    public String evidencePath() {
        return "/board/" + entry.subject() + "/demonstration-" + body.card();
    }

    /** {@return the hardware in words} */
    public String rigName() {
        return view.text(
                "signoff.rig",
                "card",
                view.text("hardware.name." + body.card()),
                "tip",
                view.text("setup.tip." + body.tip()));
    }

    /** {@return the beginning of the hash that chains the record} */
    public String hashStart() {
        return entry.hash().hex().substring(0, 12);
    }

    /** {@return the heading} */
    public String title() {
        return view.text(body.isPassed() ? "signoff.signed-title" : "signoff.not-passed-title");
    }

    /** {@return where, when, and what was set up} */
    public List<Told> facts() {
        List<Told> facts = new ArrayList<>();
        facts.add(new Told(view.text("signoff.shown-by"), body.person()));
        facts.add(new Told(
                view.text("signoff.hardware"),
                rigName() + ", " + view.text("signoff.card-version", "version", body.cardVersion())));
        Length blade = body.blade();
        if (blade != null) {
            facts.add(new Told(view.text("signoff.blade"), view.length(blade)));
            facts.add(new Told(view.text("signoff.way-round"), view.text("setup.orientation." + body.orientation())));
        }
        facts.add(new Told(view.text("signoff.conveyor"), body.conveyor()));
        facts.add(new Told(view.text("signoff.on"), view.words().day(body.happenedOn())));
        return facts;
    }

    /** {@return who signed, when by which clock, and as what} */
    public List<Told> signature() {
        List<Told> told = new ArrayList<>();
        told.add(new Told(view.text("signoff.signed-by"), body.assessor()));
        Basis basis = body.basis();
        if (basis != null) {
            told.add(new Told(
                    view.text("signoff.assessor-as"),
                    view.text("signoff.basis." + basis.word(), "record", basis.record())));
        }
        DeviceTimes device = body.device();
        if (device != null) {
            addTime(told, "signoff.entered-at", device.entered());
            addTime(told, "signoff.signed-at", device.signed());
        }
        addTime(told, "signoff.received-at", entry.recordedAt());
        return told;
    }

    private void addTime(List<Told> told, String key, @Nullable Instant at) {
        if (at != null) {
            told.add(new Told(view.text(key), view.words().time(at)));
        }
    }

    /** {@return what a reader must not overlook, in words} */
    public List<String> flags() {
        return body.flags().stream()
                .map(flag -> view.text("signoff.flag." + flag))
                .toList();
    }

    /** {@return everything that was watched for, with what is said of it; of old records what was seen} */
    public List<Told> watched() {
        return body.seen().isEmpty()
                ? body.observed().stream()
                        .map(seen -> said(seen, Seen.YES.id()))
                        .toList()
                : body.seen().stream()
                        .map(one -> said(one.observation(), one.answer()))
                        .toList();
    }

    private Told said(String observation, String answer) {
        return new Told(view.text("signoff.observation." + observation), answer);
    }

    /** {@return the critical observations for which it was not passed, in words} */
    public List<String> missed() {
        return body.missed().stream()
                .map(one -> view.text(
                        "signoff.missed",
                        "observation",
                        view.text("signoff.observation." + one.observation()),
                        "answer",
                        view.text("signoff.answer." + one.answer())))
                .toList();
    }

    /** {@return what is beyond its tolerance, with why it stays as it is} */
    public List<Told> explained() {
        SignoffWords words = new SignoffWords(view);
        return Findings.names().stream()
                .filter(body.explanations()::containsKey)
                .map(name -> new Told(words.title(name), body.explanations().getOrDefault(name, "")))
                .toList();
    }

    /** {@return what was read at the blade, in words} */
    public List<Told> readings() {
        SignoffWords words = new SignoffWords(view);
        return body.readings().stream()
                .map(reading -> new Told(words.title(reading.reading()), told(words, reading)))
                .toList();
    }

    private String told(SignoffWords words, Reading reading) {
        Length length = reading.length();
        Double degrees = reading.degrees();
        if (length != null) {
            return words.exact(length);
        }
        return degrees != null
                ? view.quantity(Angle.ofDegrees(degrees))
                : view.text("finish.bounce." + reading.typed());
    }

    /** {@return what was measured} */
    public List<Measured> measures() {
        return body.measures();
    }

    /** {@return what was measured and where, in words} */
    public String title(Measured measured) {
        return view.text("signoff.measure." + measured.measure() + "." + measured.side());
    }

    /** {@return a length, exactly} */
    public String exact(@Nullable Length length) {
        return length == null ? "" : new SignoffWords(view).exact(length);
    }
}
