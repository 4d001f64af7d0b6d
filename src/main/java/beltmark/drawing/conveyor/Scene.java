package beltmark.drawing.conveyor;

import beltmark.drawing.Drawing;
import beltmark.drawing.Point;
import java.util.List;

/**
 * A drawn conveyor with numbered spots to tap.
 *
 * @param drawing the conveyor without the numbers
 * @param spots the numbers, in their order
 */
public record Scene(Drawing drawing, List<SpotMark> spots) {

    /** Half the width of a spot, in millimetres of paper. */
    public static final double RADIUS = 4;

    public Scene {
        spots = List.copyOf(spots);
    }

    /**
     * A numbered spot.
     *
     * @param number its number in the list of options
     * @param at its middle
     */
    public record SpotMark(int number, Point at) {

        /** {@return the left edge} */
        public double x() {
            return at.x() - RADIUS;
        }

        /** {@return the upper edge} */
        public double y() {
            return at.y() - RADIUS;
        }

        /** {@return the width and height} */
        public double size() {
            return 2 * RADIUS;
        }
    }
}
