package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Power;
import beltmark.core.units.Pressure;
import beltmark.core.units.Ratio;
import beltmark.core.units.Speed;

/**
 * What a cleaner costs the drive: D = mu N and P = D v.
 *
 * @param force the drag D
 * @param power the power P
 */
public record Drag(Force force, Power power) {

    private static final double LEAST_PRESSURE_KILOPASCALS = 30;
    private static final double MOST_PRESSURE_KILOPASCALS = 100;
    private static final double LEAST_FRICTION = 0.5;
    private static final double MOST_FRICTION = 0.7;

    /**
     * Finds both.
     *
     * @param load of the blade on the belt N, above 0
     * @param friction mu, not negative; 0.5..0.7 is usual (from memory)
     * @param belt the speed of the belt v, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Drag> of(Force load, Ratio friction, Speed belt) {
        Limits.positive("load", load);
        Limits.notNegative("beltSpeed", belt);
        Force force = load.times(checked(friction).value());
        Drag drag = new Drag(force, new Power(force.newtons() * belt.metresPerSecond()));
        return Solution.of(
                drag,
                Step.of("drag", "load", load).with("friction", friction).with("force", force),
                Step.of("drag-power", "force", force).with("beltSpeed", belt).with("power", drag.power));
    }

    /**
     * Finds the drag of cleaners by the standard form F = A p mu each, with the contact area A = blade width x thickness.
     * Source: the form and one value seen in a conveyor library that names ISO 5048:1989 and DIN 22101:1982; the ranges p
     * 30..100 kPa, mu 0.5..0.7 from memory.
     *
     * @param pressure p, above 0
     * @param width of the blade (not of the belt), above 0
     * @param thickness of the contact along the belt, above 0
     * @param friction mu, not negative
     * @param cleaners how many, above 0
     * @return the drag of all; with PRESSURE_OUTSIDE_30_TO_100_KPA, FRICTION_OUTSIDE_0_5_TO_0_7 where they apply
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Force> standard(
            Pressure pressure, Length width, Length thickness, Ratio friction, double cleaners) {
        Limits.positive("pressure", pressure);
        Limits.positive("width", width);
        Limits.positive("thickness", thickness);
        Limits.positive("cleaners", cleaners);
        double area = width.millimetres() * thickness.millimetres();
        Force force =
                new Force(area * pressure.megapascals() * checked(friction).value() * cleaners);
        boolean unusualFriction = Limits.isOutside(friction.value(), LEAST_FRICTION, MOST_FRICTION);
        return Solution.of(
                        force,
                        Step.of("drag-standard", "pressure", pressure)
                                .with("width", width)
                                .with("thickness", thickness)
                                .with("friction", friction)
                                .with("cleaners", new Ratio(cleaners))
                                .with("force", force))
                .warnIf(isUnusual(pressure), Warning.PRESSURE_OUTSIDE_30_TO_100_KPA)
                .warnIf(unusualFriction, Warning.FRICTION_OUTSIDE_0_5_TO_0_7);
    }

    /**
     * Finds the contact pressure p = q/thickness (own derivation).
     *
     * @param lineLoad q, above 0
     * @param thickness of the contact along the belt, above 0
     * @return p; with PRESSURE_OUTSIDE_30_TO_100_KPA where it applies
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Pressure> contactPressure(LineLoad lineLoad, Length thickness) {
        Limits.positive("lineLoad", lineLoad);
        Limits.positive("thickness", thickness);
        Pressure pressure = new Pressure(lineLoad.newtonsPerMillimetre() / thickness.millimetres());
        return Solution.of(
                        pressure,
                        Step.of("contact-pressure", "lineLoad", lineLoad)
                                .with("thickness", thickness)
                                .with("pressure", pressure))
                .warnIf(isUnusual(pressure), Warning.PRESSURE_OUTSIDE_30_TO_100_KPA);
    }

    /** {@return the friction coefficient, not negative} */
    static Ratio checked(Ratio friction) {
        return Limits.notNegative("friction", friction);
    }

    private static boolean isUnusual(Pressure pressure) {
        return Limits.isOutside(pressure.kilopascals(), LEAST_PRESSURE_KILOPASCALS, MOST_PRESSURE_KILOPASCALS);
    }
}
