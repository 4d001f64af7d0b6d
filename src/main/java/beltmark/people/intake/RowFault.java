package beltmark.people.intake;

import java.util.Locale;

/**
 * What is wrong with a row.
 *
 * @param kind what it is
 * @param value what it is about: the cell, a line or a crew; empty when the kind says all
 */
public record RowFault(Kind kind, String value) {

    /** The kinds; each has a sentence in the texts. */
    public enum Kind {
        /** No name. */
        NO_NAME,
        /** A name too long to be one. */
        LONG_NAME,
        /** No crew. */
        NO_CREW,
        /** The name of a crew too long to be one. */
        LONG_CREW,
        /** A role that there is not. */
        UNKNOWN_ROLE,
        /** A language that is not offered. */
        UNKNOWN_LANGUAGE,
        /** A way to show lengths that is not offered. */
        UNKNOWN_LENGTHS,
        /** No day. */
        NO_DAY,
        /** A day that has not come yet. */
        FUTURE_DAY,
        /** The same name and crew in an earlier line. */
        TWICE,
        /** Somebody of that name was in that crew and left. */
        GONE;

        /** {@return the word of the sentence} */
        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    static RowFault of(Kind kind) {
        return new RowFault(kind, "");
    }
}
