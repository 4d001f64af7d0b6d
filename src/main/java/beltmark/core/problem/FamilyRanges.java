package beltmark.core.problem;

import beltmark.core.units.LengthSpan;
import java.util.Map;

/**
 * What the content file of a family says: what is drawn, and what an answer can be at all.
 *
 * @param id the family's id
 * @param version counts up whenever a code would mean another problem
 * @param lengths the drawn lengths by name
 * @param numbers the drawn numbers by name
 * @param spans what a length answer can be, by name
 */
public record FamilyRanges(
        String id,
        int version,
        Map<String, LengthRange> lengths,
        Map<String, NumberRange> numbers,
        Map<String, LengthSpan> spans) {

    public FamilyRanges {
        lengths = Map.copyOf(lengths);
        numbers = Map.copyOf(numbers);
        spans = Map.copyOf(spans);
    }

    /** {@return the drawn length of that name; throws {@link IllegalArgumentException} when the file has none} */
    public LengthRange length(String name) {
        return get(lengths, name);
    }

    /** {@return the drawn number of that name; throws {@link IllegalArgumentException} when the file has none} */
    public NumberRange number(String name) {
        return get(numbers, name);
    }

    /** {@return what an answer of that name can be; throws {@link IllegalArgumentException} when the file has none} */
    public LengthSpan span(String name) {
        return get(spans, name);
    }

    private <T> T get(Map<String, T> ranges, String name) {
        T range = ranges.get(name);
        if (range == null) {
            throw new IllegalArgumentException("family " + id + " needs a range " + name);
        }
        return range;
    }
}
