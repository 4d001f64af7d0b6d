package beltmark.core.carryback;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Coverage;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Mass;
import beltmark.core.units.MassFlow;
import beltmark.core.units.Speed;
import beltmark.core.units.Time;

/**
 * How much material a belt carries back: kg/h = (g/m2) x (width in m) x (speed in m/s) x 3.6, and over the hours it runs.
 * Own derivation (a product). Carryback is the material that sticks to the belt after the head pulley (NIOSH, Dust Control
 * Handbook, seen).
 *
 * @param hourly per hour of running
 * @param total over all hours
 */
public record Carryback(MassFlow hourly, Mass total) {

    private static final double MILLIMETRES_PER_METRE = 1000;
    private static final double KILOGRAMS_PER_HOUR = 3.6;

    /**
     * Finds both.
     *
     * @param left what lies on the belt, not negative
     * @param dirtyWidth the width that is dirty (not that of the belt), above 0
     * @param belt the speed of the belt, not negative
     * @param running how long it runs, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Carryback> of(Coverage left, Length dirtyWidth, Speed belt, Time running) {
        Limits.notNegative("carryback", left);
        Limits.positive("width", dirtyWidth);
        Limits.notNegative("beltSpeed", belt);
        Limits.notNegative("time", running);
        double metres = dirtyWidth.millimetres() / MILLIMETRES_PER_METRE;
        MassFlow hourly =
                new MassFlow(left.gramsPerSquareMetre() * metres * belt.metresPerSecond() * KILOGRAMS_PER_HOUR);
        Carryback carryback = new Carryback(hourly, new Mass(hourly.kilogramsPerHour() * running.hours()));
        return Solution.of(
                carryback,
                Step.of("carryback-hourly", "carryback", left)
                        .with("width", dirtyWidth)
                        .with("beltSpeed", belt)
                        .with("hourly", hourly),
                Step.of("carryback-total", "hourly", hourly)
                        .with("time", running)
                        .with("total", carryback.total));
    }
}
