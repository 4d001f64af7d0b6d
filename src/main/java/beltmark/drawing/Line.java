package beltmark.drawing;

/**
 * A straight line.
 *
 * @param from one end
 * @param to the other
 * @param style how it is drawn
 */
public record Line(Point from, Point to, Style style) implements Shape {

    /** {@return a line between two places} */
    public static Line of(double x1, double y1, double x2, double y2, Style style) {
        return new Line(new Point(x1, y1), new Point(x2, y2), style);
    }
}
