package beltmark.compute;

import beltmark.core.units.Quantity;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One figure of a result.
 *
 * @param <T> the result of the core
 * @param name with its unit at the end, such as {@code loadN}
 * @param unit the symbol of its unit; empty for bare numbers and words
 * @param of takes it from the result; null where the result has none
 */
record Output<T>(String name, String unit, Function<T, @Nullable Quantity> of) {

    static <T> Output<T> of(String name, String unit, Function<T, @Nullable Quantity> of) {
        return new Output<>(name, unit, of);
    }
}
