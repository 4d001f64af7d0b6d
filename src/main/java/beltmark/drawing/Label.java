package beltmark.drawing;

import org.jspecify.annotations.Nullable;

/**
 * A line of text.
 *
 * @param at the end of the baseline that the anchor names
 * @param text the words
 * @param anchor which end that is
 * @param turned whether it runs upwards, to be read from the right-hand edge of the sheet (ISO 129-1)
 * @param style how it is drawn
 */
public record Label(Point at, String text, Anchor anchor, boolean turned, Style style) implements Shape {

    /** Where along a text its given place lies; the names are those of SVG. */
    public enum Anchor {
        /** At the beginning. */
        START("start"),
        /** In the middle. */
        MIDDLE("middle"),
        /** At the end. */
        END("end");

        private final String svg;

        Anchor(String svg) {
            this.svg = svg;
        }

        /** {@return the SVG attribute} */
        public String svg() {
            return svg;
        }
    }

    /** {@return level text that begins at a place} */
    public static Label from(double x, double y, String text, Style style) {
        return new Label(new Point(x, y), text, Anchor.START, false, style);
    }

    /** {@return level text with its middle at a place} */
    public static Label centred(double x, double y, String text, Style style) {
        return new Label(new Point(x, y), text, Anchor.MIDDLE, false, style);
    }

    /** {@return level text that ends at a place} */
    public static Label upTo(double x, double y, String text, Style style) {
        return new Label(new Point(x, y), text, Anchor.END, false, style);
    }

    /** {@return the quarter turn as the SVG attribute; null, which leaves the attribute out, for level text} */
    public @Nullable String svgTurn() {
        return turned ? "rotate(-90 " + at.x() + " " + at.y() + ")" : null;
    }
}
