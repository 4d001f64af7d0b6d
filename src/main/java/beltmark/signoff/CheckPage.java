package beltmark.signoff;

import beltmark.content.Checklist.Observation;
import beltmark.web.Page;
import beltmark.web.Told;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The as-left measures, checked; and what is signed, when all are within or explained, or when it was not passed.
 *
 * @param view what all pages share
 * @param fitter who showed the set-up
 * @param shown what was read from the form
 * @param form what was typed
 * @param entry the form again, to change something
 * @param meaning what the signature says
 * @param basis on what the reader is assessor, null when not
 * @param refusal why it was not or cannot be signed, or null
 */
public record CheckPage(
        View view,
        Fitter fitter,
        Demonstration shown,
        DemonstrationForm form,
        EntryForm entry,
        String meaning,
        @Nullable Basis basis,
        @Nullable Refusal refusal)
        implements Page {

    /** {@return whether it can be signed} */
    public boolean canSign() {
        return basis != null && shown.unexplained().isEmpty();
    }

    /** {@return the heading} */
    public String title() {
        return view.text(canSign() ? "signoff.sign-title" : "signoff.check-title");
    }

    /** {@return the measures in words; none when not all was measured} */
    public List<MeasureRow> rows() {
        return shown.findings()
                .map(findings -> new SignoffWords(view).rows(findings, shown.explanations()))
                .orElse(List.of());
    }

    /** {@return how many measures are off by more than is allowed, and not explained} */
    public int beyond() {
        return shown.unexplained().size();
    }

    /** {@return whether it was passed, as far as what was seen decides} */
    public boolean isPassed() {
        return shown.isPassed();
    }

    /** {@return the observations for which it was not passed, in words} */
    public List<String> missed() {
        return shown.watched().missed().stream().map(this::said).toList();
    }

    /** {@return everything watched for, with what is said of it} */
    public List<Told> watched() {
        return shown.watched().checklist().observations().stream()
                .map(one -> new Told(
                        view.text("signoff.observation." + one.id()),
                        shown.watched().answer(one).id()))
                .toList();
    }

    private String said(Observation one) {
        return view.text(
                "signoff.missed",
                "observation",
                view.text("signoff.observation." + one.id()),
                "answer",
                view.text("signoff.answer." + shown.watched().answer(one).id()));
    }

    /** {@return what a reader of the record will be warned of, in words} */
    public List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (shown.trained()) {
            warnings.add(view.text("signoff.flag.trained-by-assessor"));
        }
        if (basis != null && basis.isAppointed()) {
            warnings.add(view.text("signoff.flag.appointed-assessor"));
        }
        return warnings;
    }

    /** {@return the hardware in words} */
    public String rigName() {
        return new SignoffWords(view).rig(shown.rig());
    }

    /** {@return why it was not signed, or null; what is beyond its tolerance is told with the measures} */
    public @Nullable String refused() {
        if (refusal == null || refusal == Refusal.OUT_OF_TOLERANCE) {
            return null;
        }
        return view.text("signoff.refused." + refusal.id());
    }

    /** {@return what is wrong with the PIN, or null} */
    public @Nullable String pinFault() {
        boolean wrong = refusal == Refusal.WRONG_PIN || refusal == Refusal.PIN_NOT_SIX_DIGITS;
        return wrong ? view.text("signoff.pin-again") : null;
    }

    /** {@return the names of the fields that are sent on} */
    public List<String> fields() {
        return DemonstrationForm.fields(shown.watched().checklist());
    }

    /** {@return what was typed into a field} */
    public String value(String name) {
        return form.value(name);
    }

    /** {@return where, when, and what was set up} */
    public List<Told> facts() {
        List<Told> facts = new ArrayList<>();
        facts.add(new Told(view.text("signoff.conveyor"), shown.place().conveyor()));
        facts.add(new Told(view.text("signoff.on"), view.words().day(shown.on())));
        EndMeasures measured = shown.measured();
        if (measured != null) {
            facts.add(new Told(
                    view.text("signoff.blade"), view.length(measured.setting().blade())));
            facts.add(new Told(
                    view.text("signoff.way-round"),
                    view.quantity(measured.asLeft().orientation().word())));
            facts.add(new Told(view.text("signoff.measure.belt-mark.title"), beltMarks(measured)));
        }
        facts.add(new Told(
                view.text("signoff.card-version-label"),
                view.text("signoff.card-version", "version", shown.rig().card().version())));
        return facts;
    }

    private String beltMarks(EndMeasures measured) {
        SignoffWords words = new SignoffWords(view);
        return view.text(
                "signoff.both-sides",
                "left",
                words.exact(measured.asLeft().beltMarks().left()),
                "right",
                words.exact(measured.asLeft().beltMarks().right()));
    }
}
