package beltmark.core.spring;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/**
 * The gaps that should be left between the coils: Sa = Na (0.0015 D^2/d + 0.1 d), half as much again under dynamic load;
 * the shortest length to use is Ln = Lc + Sa. Source: EN 13906-1 (seen through a program).
 */
public final class CoilGaps {

    private static final double DYNAMIC = 1.5;

    private CoilGaps() {}

    /**
     * Finds the least sum of coil gaps.
     *
     * @param wire the wire diameter d, above 0
     * @param meanCoil the mean coil diameter D, above d
     * @param activeCoils the active coils Na, above 0
     * @param dynamic whether the load changes often
     * @return Sa
     * @throws Refused COIL_NOT_LARGER_THAN_WIRE, NO_ACTIVE_COILS, OUT_OF_RANGE
     */
    public static Solution<Length> sum(Length wire, Length meanCoil, double activeCoils, boolean dynamic) {
        SpringIndex.checked(wire, meanCoil);
        CoilRate.checkCoils(activeCoils);
        double d = wire.millimetres();
        double coil = meanCoil.millimetres();
        double statically = activeCoils * (0.0015 * coil * coil / d + 0.1 * d);
        Length gaps = Length.ofMillimetres(dynamic ? DYNAMIC * statically : statically);
        return Solution.of(
                gaps,
                Step.of(dynamic ? "coil-gaps-dynamic" : "coil-gaps", "activeCoils", new Ratio(activeCoils))
                        .with("meanCoil", meanCoil)
                        .with("wire", wire)
                        .with("gaps", gaps));
    }

    /** {@return the shortest length to use, Ln = Lc + Sa, of a solid length above 0 and gaps of 0 or more} */
    public static Solution<Length> shortestLength(Length solid, Length gaps) {
        Limits.positive("solid", solid);
        Limits.notNegative("gaps", gaps);
        Length shortest = solid.plus(gaps);
        return Solution.of(
                shortest,
                Step.of("shortest-length", "solid", solid).with("gaps", gaps).with("shortest", shortest));
    }
}
