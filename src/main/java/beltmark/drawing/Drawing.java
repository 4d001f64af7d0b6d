package beltmark.drawing;

import java.util.List;

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
 */
public record Drawing(
        String id,
        String title,
        String description,
        double width,
        double height,
        double scale,
        double textHeight,
        List<Shape> shapes) {

    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /** {@return the same drawing under an id of its own, for pages that show several of a kind} */
    public Drawing named(String ownId) {
        return new Drawing(ownId, title, description, width, height, scale, textHeight, shapes);
    }

    /** {@return the sheet as an SVG view box} */
    public String viewBox() {
        return "0 0 " + width + " " + height;
    }
}
