package beltmark.drawing;

import beltmark.core.units.Length;
import java.util.List;

/**
 * A dimension line with its extension lines, arrowheads and figure. It tells its length in the page's source, so it
 * must not be made for anything that the reader has still to find.
 *
 * @param id hyphenated name of what is dimensioned
 * @param length what the figure says; the part of style {@link Style#MEASURE} is that long on the sheet, to scale
 * @param parts what it is drawn with
 */
public record Dimension(String id, Length length, List<Shape> parts) implements Shape {

    public Dimension {
        parts = List.copyOf(parts);
    }

    /** {@return the length as the data attribute} */
    public String nanometres() {
        return Long.toString(length.nanometres());
    }
}
