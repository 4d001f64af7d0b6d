package beltmark.cli;

import java.util.Locale;

/** Why a problem cannot be found or answers cannot be graded. */
enum GradeFault {
    /** Not JSON at all. */
    NOT_JSON,
    /** JSON of another form than answers have. */
    NOT_ANSWERS,
    /** No family of that id. */
    UNKNOWN_FAMILY,
    /** Not a problem code. */
    NO_CODE,
    /** No unit that lengths are typed in. */
    UNKNOWN_UNIT,
    /** No part of that id in the problem. */
    UNKNOWN_PART,
    /** No blank of that id in the part. */
    UNKNOWN_BLANK;

    /** {@return the key of the sentence in the text files} */
    String key() {
        return "grade.fault." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
