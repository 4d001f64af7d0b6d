package beltmark.core.solution;

import beltmark.core.units.Quantity;
import java.util.Map;

/**
 * One step of a worked solution: what was done, and the values that went in and came out. The sentence belongs to the
 * text files, which name the values in braces; the numbers are the very ones the result was computed from.
 *
 * @param id hyphenated name of the step, the key of its sentence
 * @param values the values by name, in reading order; the last one is what the step found
 */
public record Step(String id, Map<String, Quantity> values) {

    public Step {
        values = NamedValues.copyOf(values);
        if (values.isEmpty()) {
            throw new IllegalArgumentException("step " + id + " has no value");
        }
    }

    /** {@return a step with one value, to which {@link #with} adds} */
    public static Step of(String id, String name, Quantity value) {
        return new Step(id, NamedValues.NONE.plus(name, value));
    }

    /** {@return this step with one more value at the end} */
    public Step with(String name, Quantity value) {
        return new Step(id, NamedValues.copyOf(values).plus(name, value));
    }
}
