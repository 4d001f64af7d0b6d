package beltmark.core.problem.setup;

import beltmark.core.problem.Carry;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.setup.Side;
import beltmark.core.setup.Situation;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** Reading the belt mark off the tape on each side. */
final class BeltMarkPart {

    private static final Length ONE_INCH = Length.ofNanometres(LengthUnit.INCH.nanometres());
    private static final Length ONE_CENTIMETRE = Length.ofMillimetres(10);

    private BeltMarkPart() {}

    static Part of(Situation situation, SituationRanges ranges) {
        return new Part(
                SetupPart.BELT_MARK.id(),
                List.of(),
                List.of(blank(situation, Side.LEFT, ranges), blank(situation, Side.RIGHT, ranges)),
                List.of(step(situation, Side.LEFT), step(situation, Side.RIGHT)));
    }

    private static LengthBlank blank(Situation situation, Side side, SituationRanges ranges) {
        Length right = situation.beltMarks().on(side);
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("other-side", situation.beltMarks().on(side.opposite())));
        slips.add(new Slip("next-inch", right.plus(ONE_INCH)));
        slips.add(new Slip("next-centimetre", right.plus(ONE_CENTIMETRE)));
        Length ticks = ticksPastInch(right);
        if (ticks.plus(ticks).compareTo(ONE_INCH) < 0) {
            slips.add(new Slip("ticks-as-eighths", right.plus(ticks)));
        }
        return new LengthBlank(side.id(), right, ranges.reading(), ranges.tapeAnswers(), slips, Carry.none());
    }

    private static Step step(Situation situation, Side side) {
        Length right = situation.beltMarks().on(side);
        return Step.of("belt-mark-" + side.id(), "beltMark", right);
    }

    private static Length ticksPastInch(Length length) {
        return Length.ofNanometres(Math.floorMod(length.nanometres(), ONE_INCH.nanometres()));
    }
}
