package beltmark.core.geometry;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;

/** How long the pole has to be: outside + 2 (bracket + overhang). Own derivation. */
public final class PoleLength {

    private PoleLength() {}

    /**
     * Finds the length.
     *
     * @param outside the outside width of the structure, above 0
     * @param bracket how far each bracket stands out, not negative
     * @param overhang how far the pole stands out beyond each bracket, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Length> of(Length outside, Length bracket, Length overhang) {
        Limits.positive("outside", outside);
        Limits.notNegative("bracket", bracket);
        Limits.notNegative("overhang", overhang);
        Length pole = outside.plus(bracket.plus(overhang).times(2));
        return Solution.of(
                pole,
                Step.of("pole-length", "outside", outside)
                        .with("bracket", bracket)
                        .with("overhang", overhang)
                        .with("pole", pole));
    }
}
