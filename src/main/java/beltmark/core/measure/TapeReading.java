package beltmark.core.measure;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/**
 * How far a mark is from the place where a tape was held: the number under the mark, the graduations from there up to the
 * mark, less the line that the tape was held by. A tape whose hook is broken is held by a line further on, the inch at an
 * inch tape, 100 mm at a metric one ("burning an inch"); common practice, no published source.
 */
public final class TapeReading {

    private static final Length TEN_MILLIMETRES = Length.ofMillimetres(10);

    private TapeReading() {}

    /**
     * Reads the tape.
     *
     * @param at where the mark lies on the tape, on one of its graduations, not negative
     * @param tape the divisions of the tape
     * @param heldBy the line of the tape that was held, 0 when its hook is sound; not negative
     * @return the distance from where the tape was held to the mark
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Length> of(Length at, Graduation tape, Length heldBy) {
        Limits.notNegative("at", at);
        Limits.notNegative("heldBy", heldBy);
        Length number = numberUnder(at, tape);
        Step count = Step.of("tape-number", "number", new Graduated(number, tape))
                .with("ticks", Ratio.of(ticks(at, tape)))
                .with("step", new Graduated(tape.step(), tape))
                .with("reading", new Graduated(at, tape));
        if (heldBy.equals(Length.ZERO)) {
            return Solution.of(at, count);
        }
        Length distance = at.minus(heldBy);
        return Solution.of(
                distance,
                count,
                Step.of("tape-held", "reading", new Graduated(at, tape))
                        .with("held", new Graduated(heldBy, tape))
                        .with("distance", new Graduated(distance, tape)));
    }

    /** {@return how far apart the numbers on a tape are: an inch, or ten millimetres} */
    public static Length numbered(Graduation tape) {
        return tape == Graduation.MILLIMETRE
                ? TEN_MILLIMETRES
                : Length.ofNanometres(tape.unit().nanometres());
    }

    /** {@return the nearest number of a tape at or below a place on it} */
    public static Length numberUnder(Length at, Graduation tape) {
        long apart = numbered(tape).nanometres();
        return Length.ofNanometres(Math.floorDiv(at.nanometres(), apart) * apart);
    }

    /** {@return how many whole graduations a place lies above the number under it} */
    public static int ticks(Length at, Graduation tape) {
        return Math.toIntExact(
                at.minus(numberUnder(at, tape)).nanometres() / tape.step().nanometres());
    }
}
