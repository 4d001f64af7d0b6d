package beltmark.desk;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Reads what the forms of the desk have in common. */
final class Typing {

    private static final int LONGEST = 300;

    private Typing() {}

    /** {@return the day that was typed, if it lies within these two} */
    static Optional<LocalDate> day(String typed, LocalDate first, LocalDate last) {
        try {
            return Optional.of(LocalDate.parse(typed)).filter(day -> !day.isBefore(first) && !day.isAfter(last));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }

    static boolean isSaid(String text) {
        return !text.isBlank() && text.length() <= LONGEST;
    }
}
