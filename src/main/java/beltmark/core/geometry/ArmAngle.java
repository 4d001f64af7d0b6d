package beltmark.core.geometry;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;

/**
 * By how much a tip on a pivoted arm is turned when the arm has to reach a height that is off: asin((z + dz)/a) -
 * asin(z/a). A blade that stands over its pole does not turn with height; its angle comes from turning the pole. Own
 * derivation.
 */
public final class ArmAngle {

    private ArmAngle() {}

    /**
     * Finds the error of the angle.
     *
     * @param arm the length of the arm a, above 0
     * @param height of the tip over the pivot as meant z, within the arm either way
     * @param off how much higher it is really dz, signed
     * @throws Refused BEYOND_ARM when |z| or |z + dz| exceeds a, OUT_OF_RANGE
     */
    public static Solution<Angle> error(Length arm, Length height, Length off) {
        Limits.positive("arm", arm);
        Limits.signed("height", height);
        Limits.signed("heightOff", off);
        Angle meant = rise(arm, height);
        Angle real = rise(arm, height.plus(off));
        Angle error = new Angle(real.degrees() - meant.degrees());
        return Solution.of(
                error,
                Step.of("arm-angle-error", "arm", arm)
                        .with("meant", meant)
                        .with("real", real)
                        .with("error", error));
    }

    private static Angle rise(Length arm, Length height) {
        if (height.abs().compareTo(arm) > 0) {
            throw Refused.because(Refusal.BEYOND_ARM).with("height", height).with("arm", arm);
        }
        return Angle.ofRadians(Math.asin(height.millimetres() / arm.millimetres()));
    }
}
