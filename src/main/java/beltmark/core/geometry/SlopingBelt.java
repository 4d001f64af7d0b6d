package beltmark.core.geometry;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.PreciseLength;

/**
 * A distance square to a sloping belt against the same distance taken plumb: a square distance d reads d/cos(theta) plumb
 * and is d tan(theta) along the belt from there; measuring d plumb yields only d cos(theta) square. They agree only on a
 * level belt. Own derivation.
 *
 * @param plumbReading what a plumb tape reads for the wanted square distance
 * @param shiftAlong how far along the belt the plumb foot is off
 * @param gotIfPlumb the square distance one gets by measuring the wanted one plumb
 */
public record SlopingBelt(PreciseLength plumbReading, PreciseLength shiftAlong, PreciseLength gotIfPlumb) {

    private static final double STEEPEST = 89;

    /**
     * Finds the three.
     *
     * @param square the wanted distance square to the belt d
     * @param slope of the belt theta, -89..89 degrees
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<SlopingBelt> of(Length square, Angle slope) {
        Limits.signed("square", square);
        checked(slope);
        double d = square.millimetres();
        SlopingBelt belt = new SlopingBelt(
                new PreciseLength(d / slope.cos()),
                new PreciseLength(d * slope.tan()),
                new PreciseLength(d * slope.cos()));
        return Solution.of(
                belt,
                Step.of("plumb-reading", "square", square).with("slope", slope).with("plumb", belt.plumbReading),
                Step.of("shift-along", "square", square).with("slope", slope).with("shift", belt.shiftAlong),
                Step.of("got-if-plumb", "square", square).with("slope", slope).with("got", belt.gotIfPlumb));
    }

    /**
     * Finds the gap at one end when a pole is set to gravity over a belt that is tilted across: b tan(phi). The level is a
     * straight-edge here. Own derivation.
     *
     * @param blade the length of the blade b, above 0
     * @param tilt of the belt across its travel phi, -89..89 degrees
     * @return the gap, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<PreciseLength> levelAgainstTilt(Length blade, Angle tilt) {
        Limits.positive("blade", blade);
        PreciseLength gap =
                new PreciseLength(blade.millimetres() * Math.abs(checked(tilt).tan()));
        return Solution.of(
                gap,
                Step.of("level-versus-belt", "blade", blade).with("tilt", tilt).with("gap", gap));
    }

    private static Angle checked(Angle slope) {
        return Limits.within("slope", slope, -STEEPEST, STEEPEST);
    }
}
