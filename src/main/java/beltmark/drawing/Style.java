package beltmark.drawing;

import java.util.Locale;

/**
 * How a shape is drawn; the style sheet says how that looks. Line widths follow ISO 128 (from memory): visible edges wide,
 * everything else thin, 2 : 1.
 */
public enum Style {
    /** The visible edge of a part; wide. */
    EDGE,
    /** A solid part seen from outside: wide edge, paper inside. */
    PART,
    /** A part of the structure seen from outside: wide edge, light tint inside. */
    STEEL,
    /** A section through something solid, to be hatched: wide edge, paper inside. */
    SECTION,
    /** Something in the way, to be hatched crosswise; what lies behind shows through. */
    OBSTACLE,
    /** The belt: dark all over. */
    BELT,
    /** The tip of the blade: grey all over, wide edge. */
    TIP,
    /** The wire of a spring. */
    SPRING,
    /** The dashed outline of the space something takes up. */
    ENVELOPE,
    /** The same of the one that is chosen. */
    CHOSEN,
    /** Hatching; thin. */
    HATCH,
    /** A mark struck on the steel; the widest. */
    MARK,
    /** A long-dashed dotted line through a mark; thin. */
    CENTRE,
    /** A thin continuous line: tails, leaders, dividing lines, short graduations. */
    THIN,
    /** The line between two extension lines; thin, exactly as long as what it measures. */
    MEASURE,
    /** A line from the object to a dimension line; thin. */
    EXTENSION,
    /** A filled arrowhead. */
    ARROW,
    /** The face of a tape. */
    TAPE,
    /** A graduation of a tape. */
    GRADUATION,
    /** A number printed on a tape. */
    NUMBER,
    /** A sign that something is right or wrong, beside the word. */
    SIGN,
    /** Ordinary text, which keeps clear of what is behind it. */
    TEXT,
    /** Text that names a column or the result. */
    STRONG,
    /** The figure of a dimension. */
    FIGURE;

    /** {@return the class in the style sheet} */
    public String css() {
        return "d-" + name().toLowerCase(Locale.ROOT);
    }
}
