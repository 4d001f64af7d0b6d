package beltmark.trainee;

import java.util.Locale;

/**
 * How many of how many.
 *
 * @param part how many
 * @param whole of how many
 */
public record Share(long part, long whole) {

    /** None of none. */
    public static final Share NONE = new Share(0, 0);

    Share and(boolean counts) {
        return new Share(part + (counts ? 1 : 0), whole + 1);
    }

    /** {@return both together} */
    public Share and(Share other) {
        return new Share(part + other.part, whole + other.whole);
    }

    /** {@return the share in per cent with the count it rests on; a dash for none of none} */
    @Override
    public String toString() {
        return whole == 0 ? "-" : String.format(Locale.ROOT, "%.1f %% of %d", 100.0 * part / whole, whole);
    }
}
