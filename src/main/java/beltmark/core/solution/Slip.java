package beltmark.core.solution;

import beltmark.core.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A known wrong way to work a length, with the value it leads to.
 *
 * @param id hyphenated name; the text files say what to tell the person
 * @param value what somebody gets who works it this way
 */
public record Slip(String id, Length value) {

    /**
     * Finds the slip behind a length that is not right. A length midway between two slips may come from either: then
     * none is named.
     *
     * @param slips the known wrong ways
     * @param length the length that was given
     * @param tolerance how far off a slip's value it may be and still come from it
     * @return the one slip that fits, or empty when none or several do
     */
    public static Optional<Slip> behind(List<Slip> slips, Length length, Length tolerance) {
        List<Slip> fitting = slips.stream()
                .filter(slip -> length.isWithin(tolerance, slip.value()))
                .toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }
}
