package beltmark.core.measure;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far a tape may be off by its length: to 6 ft 1/32 in; 7 to 30 ft 1/16; 31 to 55 ft 1/8; 56 to 80 ft 3/16; 81 to 100
 * ft 1/4 in. Source: NIST Handbook 44, s. 5.52 (seen as an excerpt). A length between two rows takes the next row.
 */
public final class TapeTolerance {

    private static final double MILLIMETRES_PER_FOOT = 304.8;
    private static final TreeMap<Integer, Length> BY_FEET = new TreeMap<>(Map.of(
            6, thirtySeconds(1),
            30, thirtySeconds(2),
            55, thirtySeconds(4),
            80, thirtySeconds(6),
            100, thirtySeconds(8)));

    private TapeTolerance() {}

    /**
     * Finds the tolerance.
     *
     * @param tape the length of the tape, above 0, to 100 ft
     * @return how far it may be off either way
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Length> of(Length tape) {
        Limits.positive("tape", tape);
        Limits.within("tape", tape, 0, BY_FEET.lastKey() * MILLIMETRES_PER_FOOT);
        int feet = (int) Math.ceil(tape.millimetres() / MILLIMETRES_PER_FOOT);
        Length tolerance = BY_FEET.ceilingEntry(feet).getValue();
        return Solution.of(tolerance, Step.of("tape-tolerance", "tape", tape).with("tolerance", tolerance));
    }

    private static Length thirtySeconds(int count) {
        return Length.ofSixteenths(count).times(0.5);
    }
}
