package beltmark.core.spring;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/** The length at which the coils of a spring touch. The rules differ by up to half a wire: choose one and keep to it. */
public final class SolidLength {

    private static final double EN_EXTRA_NOT_GROUND = 1.5;

    private SolidLength() {}

    /**
     * Finds the solid length by end type (Shigley's Mechanical Engineering Design, table 10-1, seen second-hand).
     *
     * @param ends how the ends are made
     * @param wire the wire diameter d, above 0
     * @param activeCoils the active coils Na, above 0
     * @throws Refused NO_ACTIVE_COILS, OUT_OF_RANGE
     */
    public static Solution<Length> of(SpringEnds ends, Length wire, double activeCoils) {
        Limits.positive("wire", wire);
        CoilRate.checkCoils(activeCoils);
        return solved(wire, ends.wiresAtSolid(activeCoils));
    }

    /**
     * Finds the largest solid length of a cold-coiled spring with closed ends by EN 13906-1 (seen through a program): nt
     * dmax when ground, (nt + 1.5) dmax when not.
     *
     * @param largestWire the largest wire diameter within tolerance dmax, above 0
     * @param totalCoils all coils nt, above 0
     * @param ground whether the ends are ground
     */
    public static Solution<Length> byEuropeanRule(Length largestWire, double totalCoils, boolean ground) {
        Limits.positive("wire", largestWire);
        CoilRate.checkCoils(totalCoils);
        return solved(largestWire, ground ? totalCoils : totalCoils + EN_EXTRA_NOT_GROUND);
    }

    private static Solution<Length> solved(Length wire, double wires) {
        Length solid = wire.times(wires);
        return Solution.of(
                solid,
                Step.of("solid-length", "wire", wire)
                        .with("wires", new Ratio(wires))
                        .with("solid", solid));
    }
}
