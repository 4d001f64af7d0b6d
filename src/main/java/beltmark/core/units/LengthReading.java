package beltmark.core.units;

import org.jspecify.annotations.Nullable;

/**
 * What a typed text was read as: a length and the unit it was typed in, or the reason why it could not be read.
 *
 * @param length the length, exact to the nanometre, never negative; null when not readable
 * @param unit the unit typed, or the person's own when none was typed
 * @param fault why not; null when readable
 */
public record LengthReading(
        @Nullable Length length, LengthUnit unit, @Nullable Fault fault) {

    /** Why a text is not a length. Each has one sentence in the text files. */
    public enum Fault {
        /** Nothing was typed. */
        BLANK,
        /** More characters than any length needs. */
        TOO_LONG,
        /** A minus sign in front; lengths are typed without sign. */
        NEGATIVE,
        /** A fraction over nought. */
        ZERO_DENOMINATOR,
        /** A fraction of one or more, such as 4 17/16. */
        IMPROPER_FRACTION,
        /** A fraction that no tape is divided into, such as 1/3. */
        NOT_ON_A_TAPE,
        /** A comma that may part thousands or decimals, such as 1,250. */
        AMBIGUOUS_COMMA,
        /** A number followed by a unit other than inches or millimetres. */
        UNKNOWN_UNIT,
        /** Beyond one kilometre. */
        TOO_LARGE,
        /** Anything else. */
        NOT_A_LENGTH
    }

    static LengthReading of(Length length, LengthUnit unit) {
        return new LengthReading(length, unit, null);
    }

    static LengthReading unreadable(LengthUnit unit, Fault fault) {
        return new LengthReading(null, unit, fault);
    }

    /** {@return whether a length was read} */
    public boolean isReadable() {
        return length != null;
    }

    /** {@return the length read; only for a readable text} */
    public Length getLength() {
        if (length == null) {
            throw new IllegalStateException("nothing was read: " + fault);
        }
        return length;
    }
}
