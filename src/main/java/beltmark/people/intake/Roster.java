package beltmark.people.intake;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A roster as it was read, before it is compared with who is there.
 *
 * @param rows its rows
 * @param fault why there are none, null when there are
 * @param value what the fault is about
 */
record Roster(List<RosterRow> rows, @Nullable Fault fault, String value) {

    Roster {
        rows = List.copyOf(rows);
    }

    /** Why there are no rows; each has a sentence in the texts. */
    enum Fault {
        /** Nothing below the first row. */
        NO_ROWS,
        /** A quotation mark never ends. */
        NOT_ROWS,
        /** More than are taken at once. */
        TOO_MANY_ROWS,
        /** A column that must be there is not. */
        NO_COLUMN;

        /** {@return the word of the sentence} */
        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    static Roster of(List<RosterRow> rows) {
        return new Roster(rows, null, "");
    }

    static Roster refused(Fault fault, String value) {
        return new Roster(List.of(), fault, value);
    }
}
