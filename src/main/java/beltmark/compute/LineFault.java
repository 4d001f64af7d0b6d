package beltmark.compute;

import java.util.Locale;

/** Why a line cannot be computed before any arithmetic starts. */
enum LineFault {
    /** Not one JSON object. */
    BAD_LINE,
    /** No quantity of that name. */
    UNKNOWN_QUANTITY,
    /** Something that has to be given is not. */
    MISSING_FIELD,
    /** Something is given that the quantity does not know. */
    UNKNOWN_FIELD,
    /** The same thing is given in two units or by two names. */
    FIELD_TWICE,
    /** Not a number where one belongs. */
    NOT_A_NUMBER,
    /** A text that is not a length in inches. */
    NOT_A_LENGTH,
    /** Not one of the words that may stand there. */
    NOT_A_CHOICE,
    /** Not a text where one belongs. */
    NOT_A_TEXT,
    /** Not a list of the right form. */
    NOT_A_LIST,
    /** Neither true nor false. */
    NOT_TRUE_OR_FALSE;

    /** {@return the key of the sentence in the text files} */
    String key() {
        return "compute.fault." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
