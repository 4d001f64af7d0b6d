package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.core.finish.FinishCheck;
import beltmark.core.finish.FinishReading;
import beltmark.core.setup.AsLeftCheck;
import beltmark.core.setup.Measure;
import beltmark.core.setup.MeasureCheck;
import beltmark.core.setup.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Everything that was measured, checked.
 *
 * @param measures marks, springs and sleeves against the card
 * @param finish the readings at the blade against the site's limits
 */
record Findings(AsLeftCheck measures, FinishCheck finish) {

    /** Names the difference of the two springs among what may be beyond. */
    static final String SPRINGS = "springs";

    static Findings of(Rig rig, Checklist checklist, EndMeasures measured) {
        return new Findings(
                AsLeftCheck.of(rig.card(), measured.setting(), measured.asLeft()),
                FinishCheck.of(checklist.limits(), measured.asLeft().sleeves(), measured.finish()));
    }

    /** {@return the names of what is beyond its tolerance, in the order of the job} */
    List<String> beyond() {
        List<String> beyond = new ArrayList<>();
        measures.measures().stream()
                .filter(one -> !one.isWithin())
                .map(MeasureCheck::id)
                .forEach(beyond::add);
        if (!measures.areSpringsEqual()) {
            beyond.add(SPRINGS);
        }
        finish.findings().stream()
                .filter(one -> !one.isWithin())
                .map(one -> one.reading().id())
                .forEach(beyond::add);
        return List.copyOf(beyond);
    }

    /** {@return the names of all that may be beyond; nothing is wanted of a belt mark} */
    static List<String> names() {
        Stream<String> measures = Stream.of(Measure.values())
                .filter(measure -> measure != Measure.BELT_MARK)
                .flatMap(measure -> Stream.of(Side.values()).map(side -> DemonstrationForm.name(measure, side)));
        Stream<String> readings = Stream.of(FinishReading.values()).map(FinishReading::id);
        return Stream.of(measures, Stream.of(SPRINGS), readings)
                .flatMap(some -> some)
                .toList();
    }
}
