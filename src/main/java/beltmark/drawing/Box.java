package beltmark.drawing;

/**
 * An upright rectangle.
 *
 * @param corner the upper left corner
 * @param width to the right, in millimetres of paper
 * @param height downwards, in millimetres of paper
 * @param style how it is drawn
 */
public record Box(Point corner, double width, double height, Style style) implements Shape {

    public Box {
        width = Point.rounded(width);
        height = Point.rounded(height);
    }

    /** {@return the rectangle between two opposite corners, whichever they are} */
    public static Box between(double x1, double y1, double x2, double y2, Style style) {
        Point corner = new Point(Math.min(x1, x2), Math.min(y1, y2));
        return new Box(corner, Math.abs(x2 - x1), Math.abs(y2 - y1), style);
    }

    /** {@return the right edge} */
    public double right() {
        return corner.x() + width;
    }

    /** {@return the lower edge} */
    public double bottom() {
        return corner.y() + height;
    }
}
