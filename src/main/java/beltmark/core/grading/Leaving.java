package beltmark.core.grading;

import java.util.Locale;

/** How a part that was not right yet was left. */
public enum Leaving {
    /** Going on with the own figure, which later parts take as it is. */
    OWN_FIGURE,
    /** Having the worked steps shown; later parts take the right figure. */
    STEPS_SHOWN;

    /** {@return the hyphenated name used in forms and records} */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
