package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.core.finish.BounceResult;
import beltmark.core.finish.Finish;
import beltmark.core.setup.AsLeft;
import beltmark.core.setup.Measure;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Sides;
import beltmark.core.setup.SpringSetting;
import beltmark.core.setup.TipCard;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import beltmark.signoff.Demonstration.Place;
import beltmark.texts.Words;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the sign-off form: what it says, or what is wrong with each field, in a sentence. */
final class DemonstrationReading {

    /** The longest name of a conveyor, in characters. */
    static final int LONGEST_CONVEYOR = 60;

    private static final int SHORTEST_EXPLANATION = 10;
    /** The longest explanation, in characters. */
    static final int LONGEST_EXPLANATION = 300;

    private static final String YES = "yes";
    private static final LengthSpan EDGE = LengthSpan.ofMillimetres(0, 1500);
    private static final LengthSpan SPLICE = LengthSpan.ofMillimetres(0, 100);

    private final DemonstrationForm form;
    private final Rig rig;
    private final FieldReader read;
    private final Optional<Demonstration> demonstration;

    private DemonstrationReading(DemonstrationForm form, Rig rig, Checklist checklist, Words words, LocalDate today) {
        this.form = form;
        this.rig = rig;
        this.read = new FieldReader(form, words);
        EndMeasures asMeasured = null;
        Watched watched = watched(checklist);
        // whoever stops a demonstration that has failed has nothing to measure
        if (watched.isPassed() || !read.faults().isEmpty() || form.isAllMeasured()) {
            asMeasured = measured();
        }
        Demonstration shown =
                new Demonstration(rig, place(today), watched, asMeasured, explanations(), trained(), form.typed());
        this.demonstration = read.faults().isEmpty() ? Optional.of(shown) : Optional.empty();
    }

    /**
     * Reads a form.
     *
     * @param form what was sent
     * @param rig the hardware
     * @param checklist what is watched for
     * @param words the words of whoever typed it; a length without a unit is in theirs
     * @param today the day at the site
     * @return what it says
     */
    static DemonstrationReading of(DemonstrationForm form, Rig rig, Checklist checklist, Words words, LocalDate today) {
        return new DemonstrationReading(form, rig, checklist, words, today);
    }

    /** {@return the value of a blade option} */
    static String bladeValue(Length blade) {
        return Long.toString(blade.nanometres());
    }

    Optional<Demonstration> demonstration() {
        return demonstration;
    }

    /** {@return what is wrong, worded, by field} */
    Map<String, String> faults() {
        return read.faults();
    }

    private Watched watched(Checklist checklist) {
        Map<String, Seen> answers = new HashMap<>();
        checklist
                .observations()
                .forEach(one -> answers.put(
                        one.id(),
                        read.pick(DemonstrationForm.name(one), List.of(Seen.values()), Seen::id, "not-answered")));
        return new Watched(checklist, answers);
    }

    private Place place(LocalDate today) {
        return new Place(
                read.text(DemonstrationForm.CONVEYOR, 1, LONGEST_CONVEYOR),
                read.pick(DemonstrationForm.ON, Signoff.daysUpTo(today), LocalDate::toString, "day"),
                FieldReader.time(form.value(DemonstrationForm.ENTERED_AT)));
    }

    private boolean trained() {
        return read.pick(DemonstrationForm.TRAINED, List.of(YES, "no"), answer -> answer, "trained")
                .equals(YES);
    }

    private Map<String, String> explanations() {
        Map<String, String> explanations = new HashMap<>();
        for (String beyond : Findings.names()) {
            String field = DemonstrationForm.explain(beyond);
            if (!form.value(field).isEmpty()) {
                explanations.put(beyond, read.text(field, SHORTEST_EXPLANATION, LONGEST_EXPLANATION));
            }
        }
        return explanations;
    }

    private @Nullable EndMeasures measured() {
        Optional<SpringSetting> setting = setting();
        Orientation orientation =
                read.pick(DemonstrationForm.ORIENTATION, List.of(Orientation.values()), Orientation::id, "orientation");
        AsLeft asLeft = new AsLeft(
                orientation,
                sides(Measure.BELT_MARK),
                sides(Measure.MOUNT_MARK),
                sides(Measure.SPRING),
                sides(Measure.SLEEVE));
        Finish finish = new Finish(
                new Sides(
                        read.length(DemonstrationForm.EDGE_LEFT, EDGE),
                        read.length(DemonstrationForm.EDGE_RIGHT, EDGE)),
                read.angle(DemonstrationForm.ANGLE),
                read.pick(DemonstrationForm.BOUNCE, List.of(BounceResult.values()), BounceResult::id, "bounce"),
                read.length(DemonstrationForm.SPLICE, SPLICE));
        return setting.map(found -> new EndMeasures(found, asLeft, finish)).orElse(null);
    }

    private Optional<SpringSetting> setting() {
        List<Length> blades = rig.card().tip(rig.tip()).chart().stream()
                .map(TipCard.Setting::blade)
                .toList();
        Length blade = read.pick(DemonstrationForm.BLADE, blades, DemonstrationReading::bladeValue, "blade");
        return SpringSetting.fromChart(rig.card(), rig.tip(), blade);
    }

    private Sides sides(Measure measure) {
        return new Sides(
                read.length(DemonstrationForm.name(measure, Side.LEFT), measure.plausible()),
                read.length(DemonstrationForm.name(measure, Side.RIGHT), measure.plausible()));
    }
}
