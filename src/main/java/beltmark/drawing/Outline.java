package beltmark.drawing;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Straight lines from point to point.
 *
 * @param points the corners in order
 * @param closed whether the last is joined to the first
 * @param style how it is drawn
 */
public record Outline(List<Point> points, boolean closed, Style style) implements Shape {

    private static final double TOOTH = 1.2;

    public Outline {
        points = List.copyOf(points);
    }

    /**
     * {@return a level bar that goes on beyond the drawing: square at {@code from}, with a break line at {@code to}}
     */
    public static Outline brokenBar(double from, double to, double top, double bottom, Style style) {
        double in = to > from ? to - TOOTH : to + TOOTH;
        double third = (bottom - top) / 3;
        return new Outline(
                List.of(
                        new Point(from, top),
                        new Point(to, top),
                        new Point(in, top + third),
                        new Point(to, top + 2 * third),
                        new Point(in, bottom),
                        new Point(from, bottom)),
                true,
                style);
    }

    /** {@return the corners as the SVG attribute} */
    public String svgPoints() {
        return points.stream().map(point -> point.x() + "," + point.y()).collect(Collectors.joining(" "));
    }
}
