package beltmark.drawing.spring;

import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Style;
import java.util.List;

/**
 * A sheet turned with a sloping belt: places are told along the belt's travel and square to it, downwards.
 *
 * @param centre where the tip touches the belt
 * @param slopeRadians of the belt, positive where it runs up to the right
 */
record Turned(Point centre, double slopeRadians) {

    /** {@return the place that far along the travel and that far below the belt} */
    Point at(double along, double below) {
        double cos = Math.cos(slopeRadians);
        double sin = Math.sin(slopeRadians);
        return new Point(centre.x() + along * cos + below * sin, centre.y() - along * sin + below * cos);
    }

    /** {@return the place at an angle to the belt, counted from the side it comes from, that far from the tip} */
    Point at(double degrees, double radius, double aside) {
        double angle = Math.toRadians(degrees);
        double along = -radius * Math.cos(angle) - aside * Math.sin(angle);
        double below = radius * Math.sin(angle) - aside * Math.cos(angle);
        return at(along, below);
    }

    /** {@return a bar from one distance to another at an angle to the belt} */
    Outline bar(double degrees, double from, double to, double half, Style style) {
        return new Outline(
                List.of(
                        at(degrees, from, -half),
                        at(degrees, to, -half),
                        at(degrees, to, half),
                        at(degrees, from, half)),
                true,
                style);
    }
}
