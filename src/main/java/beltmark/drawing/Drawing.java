package beltmark.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A finished drawing.
 *
 * @param id hyphenated name, unlike that of any other drawing on the same page
 * @param title what it is, for screen readers
 * @param description what can be seen on it, for screen readers
 * @param width of the sheet, in millimetres of paper
 * @param height of the sheet, in millimetres of paper
 * @param scale how many millimetres of steel one millimetre of paper stands for, in every direction that is to scale
 * @param textHeight the size of all text, in millimetres of paper
 * @param shapes what is drawn, the hindmost first
 * @param axis how heights stand on it, where one may be marked by a tap; else null
 */
public record Drawing(
        String id,
        String title,
        String description,
        double width,
        double height,
        double scale,
        double textHeight,
        List<Shape> shapes,
        @Nullable Heights axis) {

    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /** A drawing that nothing is marked on. */
    public Drawing(
            String id,
            String title,
            String description,
            double width,
            double height,
            double scale,
            double textHeight,
            List<Shape> shapes) {
        this(id, title, description, width, height, scale, textHeight, shapes, null);
    }

    /** {@return this drawing, on which heights may be marked by a tap} */
    public Drawing marked(Heights heights) {
        return new Drawing(id, title, description, width, height, scale, textHeight, shapes, heights);
    }

    /** {@return where height nought stands, in millimetres of paper from the top; null where nothing is marked} */
    public @Nullable String axisZero() {
        return axis == null ? null : Double.toString(axis.zero());
    }

    /** {@return the same drawing under an id of its own, for pages that show several of a kind} */
    public Drawing named(String ownId) {
        return new Drawing(ownId, title, description, width, height, scale, textHeight, shapes, axis);
    }

    /** {@return the sheet as an SVG view box} */
    public String viewBox() {
        return "0 0 " + width + " " + height;
    }
}
