package beltmark.core.grading;

import java.util.Locale;

/** How an answer to one blank was judged. */
public enum Verdict {
    /** Within tolerance of the right value, or the right option. */
    RIGHT,
    /** Wrong in itself, and right from the person's own earlier figures. */
    CARRIED,
    /** Not right, and no more than one graduation off. */
    ONE_OFF,
    /** The right number with another unit, or without the unit that it needs. */
    WRONG_UNIT,
    /** What a known wrong way of working leads to. */
    SLIP,
    /** What two known wrong ways of working both lead to: neither is named. */
    AMBIGUOUS,
    /** None of these. */
    WRONG,
    /** Could not be read, or cannot be an answer at all; asked again and not counted. */
    UNREADABLE;

    /** {@return whether the part need not be worked again} */
    public boolean isAccepted() {
        return this == RIGHT || this == CARRIED;
    }

    /** {@return the hyphenated name used in text keys, records and JSON} */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the verdict of an id; throws {@link IllegalArgumentException} when there is none} */
    public static Verdict of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
