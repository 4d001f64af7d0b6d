package beltmark.review.first;

import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.Optional;

/**
 * Whole months, first and last included.
 *
 * @param from the first, such as 2026-03; empty for the earliest there is
 * @param to the last; empty for the latest there is
 */
public record Period(String from, String to) {

    /** All months. */
    public static final Period EVER = new Period("", "");

    /** {@return the period of two months as typed in an address; nothing if one of them is no month} */
    public static Optional<Period> parse(String from, String to) {
        return isMonth(from) && isMonth(to) ? Optional.of(new Period(from, to)) : Optional.empty();
    }

    private static boolean isMonth(String typed) {
        try {
            return typed.isEmpty() || YearMonth.parse(typed).toString().equals(typed);
        } catch (DateTimeException e) {
            return false;
        }
    }

    /** Months sort as text. */
    String earliest() {
        return from.isEmpty() ? "0000-00" : from;
    }

    String latest() {
        return to.isEmpty() ? "9999-99" : to;
    }
}
