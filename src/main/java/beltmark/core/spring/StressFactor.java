package beltmark.core.spring;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Length;
import beltmark.core.units.Ratio;

/**
 * By how much the stress at the inside of the coil exceeds that of a straight bar in torsion; C is the spring index.
 * Source: Shigley's Mechanical Engineering Design, eq. 10-3 to 10-5 (seen second-hand). EN 13906-1 writes the
 * Bergsträsser factor as (C + 0.5)/(C - 0.75), which is the same.
 */
public enum StressFactor {
    /** Wahl: (4C - 1)/(4C - 4) + 0.615/C. */
    WAHL,
    /** Bergsträsser: (4C + 2)/(4C - 3); for springs as wound. */
    BERGSTRAESSER,
    /** Direct shear only: (2C + 1)/(2C); only after presetting. */
    DIRECT_SHEAR,
    /** No correction: 1. Only for comparing with texts that use none. */
    NONE;

    /** {@return the factor at an index above 1} */
    public double at(double index) {
        return switch (this) {
            case WAHL -> (4 * index - 1) / (4 * index - 4) + 0.615 / index;
            case BERGSTRAESSER -> (4 * index + 2) / (4 * index - 3);
            case DIRECT_SHEAR -> (2 * index + 1) / (2 * index);
            case NONE -> 1;
        };
    }

    /**
     * Finds the factor of a spring.
     *
     * @param wire the wire diameter d, above 0
     * @param meanCoil the mean coil diameter D, above d
     * @return the factor; with INDEX_OUTSIDE_4_TO_12 where it applies
     * @throws Refused COIL_NOT_LARGER_THAN_WIRE, OUT_OF_RANGE
     */
    public Solution<Ratio> solution(Length wire, Length meanCoil) {
        double index = SpringIndex.checked(wire, meanCoil);
        Ratio factor = new Ratio(at(index));
        return Solution.of(
                        factor,
                        Step.of("stress-factor", "index", new Ratio(index)).with("factor", factor))
                .warnIf(SpringIndex.isDoubtful(index), Warning.INDEX_OUTSIDE_4_TO_12);
    }

    /** {@return the lower-case name used on the command line} */
    public String id() {
        return switch (this) {
            case WAHL -> "wahl";
            case BERGSTRAESSER -> "bergstraesser";
            case DIRECT_SHEAR -> "direct-shear";
            case NONE -> "none";
        };
    }
}
