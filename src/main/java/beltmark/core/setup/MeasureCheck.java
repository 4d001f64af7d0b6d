package beltmark.core.setup;

import beltmark.core.units.Length;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One as-left measure against what the card asks for.
 *
 * @param measure what was measured
 * @param side on which side
 * @param wanted what the card asks for here
 * @param measured what was measured
 * @param tolerance how far off it may be, either way, the last bit still allowed
 * @param slip the likely slip behind a measure that is off; null when it is not, or when none or several fit
 */
public record MeasureCheck(
        Measure measure,
        Side side,
        Length wanted,
        Length measured,
        Length tolerance,
        @Nullable String slip) {

    /** {@return the hyphenated name of the measure and its side} */
    public String id() {
        return measure.id() + "-" + side.id();
    }

    /** {@return measured less wanted: positive when too high or too long} */
    public Length offBy() {
        return measured.minus(wanted);
    }

    /** {@return whether it is off by no more than the tolerance} */
    public boolean isWithin() {
        return measured.isWithin(tolerance, wanted);
    }

    /** {@return by how much it is off beyond what is allowed; zero when within} */
    public Length beyondTolerance() {
        return Length.max(Length.ZERO, offBy().abs().minus(tolerance));
    }

    /** {@return the likely slip, if one can be told} */
    public Optional<String> findSlip() {
        return Optional.ofNullable(slip);
    }
}
