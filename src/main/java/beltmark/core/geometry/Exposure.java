package beltmark.core.geometry;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;

/**
 * How much sleeve shows under the bushing after everything that changes it: e = e0 - bracket too high + wear - drop. The
 * sleeve is taken as fixed to the base and the bushing as moving with the pole (a modelling assumption). Own derivation.
 */
public final class Exposure {

    private Exposure() {}

    /**
     * Finds the sleeve showing.
     *
     * @param asSet the sleeve showing when everything is on its mark e0, not negative
     * @param bracketHigh how far above its mark the bracket is; negative when below
     * @param wear of the tip, not negative
     * @param drop of the belt or the height of a splice, not negative
     * @return e, not negative
     * @throws Refused NO_SLEEVE_LEFT, OUT_OF_RANGE
     */
    public static Solution<Length> after(Length asSet, Length bracketHigh, Length wear, Length drop) {
        Limits.notNegative("exposure", asSet);
        Limits.signed("bracketHigh", bracketHigh);
        Limits.notNegative("wear", wear);
        Limits.notNegative("drop", drop);
        Length left = asSet.minus(bracketHigh).plus(wear).minus(drop);
        if (left.isNegative()) {
            throw Refused.because(Refusal.NO_SLEEVE_LEFT).with("missing", left.negated());
        }
        return Solution.of(
                left,
                Step.of("exposure-after", "asSet", asSet)
                        .with("bracketHigh", bracketHigh)
                        .with("wear", wear)
                        .with("drop", drop)
                        .with("left", left));
    }
}
