package beltmark.core.grading;

import beltmark.core.measure.NumberReader;
import beltmark.core.units.LengthReading.Fault;
import java.util.Locale;

/** Why an answer was not judged; each has one sentence in the text files. */
public enum Unreadable {
    /** Nothing was typed or picked. */
    BLANK,
    /** More characters than any length needs. */
    TOO_LONG,
    /** A minus sign in front. */
    NEGATIVE,
    /** A fraction over nought. */
    ZERO_DENOMINATOR,
    /** A fraction of one or more, such as 4 17/16. */
    IMPROPER_FRACTION,
    /** A fraction that no tape is divided into. */
    NOT_ON_A_TAPE,
    /** A comma that may part thousands or decimals. */
    AMBIGUOUS_COMMA,
    /** A unit other than inches or millimetres. */
    UNKNOWN_UNIT,
    /** Beyond anything on a conveyor. */
    TOO_LARGE,
    /** Not a length at all. */
    NOT_A_LENGTH,
    /** Read, and beyond what this length can be. */
    OUT_OF_RANGE,
    /** Read, beyond what this length can be, and fitting when taken in the other unit. */
    OTHER_UNIT,
    /** Not one of the options. */
    NOT_AN_OPTION,
    /** Not a number at all. */
    NOT_A_NUMBER,
    /** A unit that is not known or measures something else. */
    OTHER_KIND,
    /** An item of an order or a match without its place or partner. */
    PLACE_MISSING,
    /** Two items at the same place. */
    PLACE_TWICE;

    static Unreadable of(Fault fault) {
        return valueOf(fault.name());
    }

    static Unreadable of(NumberReader.Trouble trouble) {
        return valueOf(trouble.name());
    }

    /** {@return the hyphenated name used in text keys and JSON} */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
