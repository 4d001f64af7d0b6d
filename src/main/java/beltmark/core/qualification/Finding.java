package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One reason with the values that its sentence names.
 *
 * @param reason why
 * @param values whole numbers, dates and texts by name
 */
public record Finding(Reason reason, Map<String, Object> values) {

    public Finding {
        values = Map.copyOf(values);
    }

    static Finding of(Reason reason) {
        return new Finding(reason, Map.of());
    }

    static Finding until(Reason reason, LocalDate lastDay) {
        return new Finding(reason, Map.of("lastDay", lastDay));
    }

    static Finding count(Reason reason, int have, int need) {
        return new Finding(reason, Map.of("have", have, "need", need));
    }

    Finding with(String name, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(name, value);
        return new Finding(reason, more);
    }
}
