package beltmark.cli;

import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Undefined;
import beltmark.texts.Words;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Named statistics in order; those that are not defined are null and have their reason in {@code undefined}. */
final class Measures {

    private final Words words;
    private final Map<String, @Nullable Object> values = new LinkedHashMap<>();
    private final Map<String, String> reasons = new LinkedHashMap<>();

    Measures(Words words) {
        this.words = words;
    }

    void put(String name, Object value) {
        values.put(name, value);
    }

    void put(String name, Measure measure) {
        put(name, measure, value -> value);
    }

    /** Adds what follows from the value of a measure. */
    void put(String name, Measure measure, DoubleFunction<Object> what) {
        Double value = measure.value();
        values.put(name, value == null ? null : what.apply(value));
        Undefined why = measure.undefined();
        if (why != null) {
            reasons.put(name, words.say("analyse.undefined." + why.id()));
        }
    }

    Map<String, @Nullable Object> toMap() {
        if (!reasons.isEmpty()) {
            values.put("undefined", reasons);
        }
        return values;
    }
}
