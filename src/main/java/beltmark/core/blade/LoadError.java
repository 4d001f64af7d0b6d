package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.SpringRate;

/**
 * How far the blade load is off when the springs are set a little wrong: at worst k (t_L + t_R), likely k sqrt(t_L^2 +
 * t_R^2). Own derivation.
 *
 * @param worst both wrong the same way
 * @param likely the root of the sum of squares
 */
public record LoadError(Force worst, Force likely) {

    /**
     * Finds both.
     *
     * @param rate of each spring k, above 0
     * @param left how far the left spring may be off t_L; its sign does not matter
     * @param right the same for the right spring t_R
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<LoadError> of(SpringRate rate, Length left, Length right) {
        Limits.positive("rate", rate);
        double leftOff = Math.abs(Limits.signed("left", left).millimetres());
        double rightOff = Math.abs(Limits.signed("right", right).millimetres());
        double k = rate.newtonsPerMillimetre();
        LoadError error =
                new LoadError(new Force(k * (leftOff + rightOff)), new Force(k * Math.hypot(leftOff, rightOff)));
        return Solution.of(
                error,
                Step.of("load-error", "rate", rate)
                        .with("left", left)
                        .with("right", right)
                        .with("worst", error.worst)
                        .with("likely", error.likely));
    }
}
