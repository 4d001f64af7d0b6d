package beltmark.core.statistics;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A statistic, or why there is none; exactly one of the two is there, and the value is never NaN or infinite.
 *
 * @param value the value, null if it is not defined
 * @param undefined why it is not defined, null if it is
 */
public record Measure(@Nullable Double value, @Nullable Undefined undefined) {

    /** Refuses neither, both, and a value that is no number. */
    public Measure {
        if ((value == null) == (undefined == null)) {
            throw new IllegalArgumentException("a measure is either a value or a reason");
        }
        if (value != null && !Double.isFinite(value)) {
            throw new IllegalArgumentException("a measure of " + value + " is no number");
        }
    }

    /** {@return a measure with this value, which is finite} */
    public static Measure of(double value) {
        return new Measure(value, null);
    }

    /** {@return a measure that is not defined} */
    public static Measure undefined(Undefined why) {
        return new Measure(null, why);
    }

    /** {@return the value; nothing if it is not defined} */
    public OptionalDouble toOptional() {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** {@return what follows from the value, which may again be not defined; for the same reason nothing} */
    public Measure flatMap(DoubleFunction<Measure> function) {
        return value == null ? this : function.apply(value);
    }

    /** {@return what follows from the value; for the same reason nothing} */
    public Measure map(DoubleUnaryOperator function) {
        return value == null ? this : of(function.applyAsDouble(value));
    }
}
