package beltmark.core.grading;

import java.util.Locale;

/** How an answer to one blank was judged. */
public enum Verdict {
    /** Within tolerance of the right value, or the right option. */
    RIGHT,
    /** Wrong in itself, and right from the person's own earlier figures. */
    CARRIED,
    /** What a known wrong way of working leads to. */
    SLIP,
    /** None of these. */
    WRONG,
    /** Could not be read, or cannot be an answer at all; asked again and not counted. */
    UNREADABLE;

    /** {@return whether the part need not be worked again} */
    public boolean isAccepted() {
        return this == RIGHT || this == CARRIED;
    }

    /** {@return the lower-case name used in text keys and JSON} */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return the verdict of an id; throws {@link IllegalArgumentException} when there is none} */
    public static Verdict of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT));
    }
}
