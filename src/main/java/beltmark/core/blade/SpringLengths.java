package beltmark.core.blade;

import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;

/**
 * The two springs as measured from the top of the washer to the top of the base. The coil itself is shorter by the
 * washer (common practice, no published source).
 *
 * @param left on the left side, above 0
 * @param right on the right side, above 0
 * @param washer the thickness of the washer, not negative; 0 when the coil alone was measured
 */
public record SpringLengths(Length left, Length right, Length washer) {

    public SpringLengths {
        Limits.positive("left", left);
        Limits.positive("right", right);
        Limits.notNegative("washer", washer);
    }

    /** {@return the length of the left coil alone} */
    public Length leftCoil() {
        return left.minus(washer);
    }

    /** {@return the length of the right coil alone} */
    public Length rightCoil() {
        return right.minus(washer);
    }

    /** {@return these as a step} */
    Step step() {
        return Step.of("coil-lengths", "left", left)
                .with("right", right)
                .with("washer", washer)
                .with("leftCoil", leftCoil())
                .with("rightCoil", rightCoil());
    }
}
