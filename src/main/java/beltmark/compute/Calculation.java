package beltmark.compute;

import beltmark.core.solution.Solution;
import beltmark.core.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A quantity that can be computed.
 *
 * @param <T> the result of the core
 * @param name hyphenated
 * @param aliases other names of it
 * @param fields what is given for it
 * @param function the function of the core behind it
 * @param outputs the figures of its result; the first is the one that is meant when one speaks of the quantity
 */
record Calculation<T>(
        String name,
        List<String> aliases,
        List<Field> fields,
        Function<Given, Solution<T>> function,
        List<Output<T>> outputs) {

    Calculation {
        aliases = List.copyOf(aliases);
        fields = List.copyOf(fields);
        outputs = List.copyOf(outputs);
    }

    /** A quantity whose result is one figure. */
    static <Q extends Quantity> Calculation<Q> of(
            String name, String unit, Function<Given, Solution<Q>> function, Field... fields) {
        return new Calculation<>(
                name, List.of(), List.of(fields), function, List.of(Output.of("value", unit, value -> value)));
    }

    /** A quantity whose result has several figures, which {@link #giving} adds. */
    static <T> Calculation<T> several(String name, Function<Given, Solution<T>> function, Field... fields) {
        return new Calculation<>(name, List.of(), List.of(fields), function, List.of());
    }

    Calculation<T> giving(String output, String unit, Function<T, @Nullable Quantity> of) {
        List<Output<T>> more = new ArrayList<>(outputs);
        more.add(Output.of(output, unit, of));
        return new Calculation<>(name, aliases, fields, function, more);
    }

    Calculation<T> also(String... others) {
        return new Calculation<>(name, List.of(others), fields, function, outputs);
    }

    Computed compute(Given given) {
        return Computed.of(this, function.apply(given));
    }
}
