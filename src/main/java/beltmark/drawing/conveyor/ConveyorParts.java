package beltmark.drawing.conveyor;

import beltmark.core.lockout.Spot;
import beltmark.drawing.Box;
import beltmark.drawing.Line;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import java.util.ArrayList;
import java.util.List;

/** The parts of the drawn conveyor, in millimetres of paper; the tail stands on the left, the head on the right. */
final class ConveyorParts {

    private static final double GROUND = 92;
    private static final double TAIL_X = 16;
    private static final double TAIL_Y = 51;
    private static final double HEAD_X = 92;
    private static final double HEAD_Y = 35;
    private static final double PULLEY = 5;
    private static final double TAKE_UP_X = 50;
    private static final double TAKE_UP_Y = 66;
    private static final double LOOP = 4;
    private static final int CORNERS = 36;

    private ConveyorParts() {}

    /** {@return belt, pulleys, steel and ground} */
    static List<Shape> always() {
        List<Shape> shapes = new ArrayList<>(List.of(
                Line.of(0, GROUND, 112, GROUND, Style.EDGE),
                Box.between(22, 47, 24, GROUND, Style.STEEL),
                Box.between(80, 36, 82, GROUND, Style.STEEL),
                deck(),
                circle(TAIL_X, TAIL_Y, PULLEY - 0.8, Style.PART),
                circle(HEAD_X, HEAD_Y, PULLEY - 0.8, Style.PART),
                circle(TAKE_UP_X, TAKE_UP_Y, LOOP - 0.8, Style.PART),
                Line.of(43, 51, 43, 86, Style.EDGE),
                Line.of(57, 48, 57, 86, Style.EDGE)));
        shapes.addAll(belt());
        return shapes;
    }

    /** The stringer that the idlers stand on. */
    private static Shape deck() {
        return new Outline(
                List.of(
                        new Point(TAIL_X, TAIL_Y - 1),
                        new Point(HEAD_X, HEAD_Y - 1),
                        new Point(HEAD_X, HEAD_Y + 1),
                        new Point(TAIL_X, TAIL_Y + 1)),
                true,
                Style.STEEL);
    }

    /** The belt all round, with its loop down to the take-up pulley. */
    private static List<Shape> belt() {
        List<Point> points = new ArrayList<>();
        arc(points, TAIL_X, TAIL_Y, PULLEY, 78, 258);
        arc(points, HEAD_X, HEAD_Y, PULLEY, -102, 78);
        points.add(new Point(TAKE_UP_X + LOOP, returnAt(TAKE_UP_X + LOOP)));
        arc(points, TAKE_UP_X, TAKE_UP_Y, LOOP, 0, 180);
        points.add(new Point(TAKE_UP_X - LOOP, returnAt(TAKE_UP_X - LOOP)));
        return List.of(new Outline(points, true, Style.MARK));
    }

    /** How high the return side lies at a place. */
    private static double returnAt(double x) {
        return TAIL_Y + PULLEY + (x - TAIL_X) * (HEAD_Y - TAIL_Y) / (HEAD_X - TAIL_X);
    }

    /** How high the carrying side lies at a place. */
    private static double carryingAt(double x) {
        return returnAt(x) - 2 * PULLEY;
    }

    /** {@return the shapes of one spot} */
    static List<Shape> of(Spot spot) {
        return switch (spot) {
            case HEAD_DRIVE -> motor(97, 40);
            case TAIL_DRIVE -> motor(3, 53);
            case HEAD_DISCONNECT -> disconnect(96, 70);
            case TAIL_DISCONNECT -> disconnect(10, 64);
            case CAPACITORS -> capacitors();
            case TAKE_UP_WEIGHT ->
                List.of(Box.between(44, 73, 56, 85, Style.OBSTACLE), Line.of(50, 66, 50, 73, Style.EDGE));
            case TAKE_UP_PIN -> List.of(Box.between(54, 69, 61, 71, Style.TIP), circle(57, 70, 1.6, Style.PART));
            case AIR_RECEIVER -> receiver();
            case AIR_VALVE -> valve();
            case CLEANER_SPRINGS -> cleaner();
            case PUSH_BUTTONS -> buttons();
            case PULL_CORD -> cord();
            case SELECTOR -> selector();
            case LOAD -> load();
            case HORN -> horn();
            case BELT_CLAMP ->
                List.of(
                        Box.between(74.5, carryingAt(76) - 3, 77.5, carryingAt(76) + 3, Style.TIP),
                        Line.of(76, carryingAt(76) + 3, 76, carryingAt(76) + 6, Style.EDGE));
        };
    }

    private static List<Shape> motor(double x, double y) {
        return List.of(
                Box.between(x, y, x + 9, y + 6, Style.STEEL),
                Line.of(x + 2, y, x + 2, y + 6, Style.THIN),
                Line.of(x + 4.5, y, x + 4.5, y + 6, Style.THIN),
                Line.of(x + 7, y, x + 7, y + 6, Style.THIN));
    }

    private static List<Shape> disconnect(double x, double y) {
        return List.of(
                Box.between(x, y, x + 7, y + 12, Style.PART),
                circle(x + 3.5, y + 6, 2, Style.PART),
                Line.of(x + 3.5, y + 6, x + 6, y + 2, Style.MARK),
                Line.of(x + 3.5, y + 12, x + 3.5, GROUND, Style.EDGE));
    }

    private static List<Shape> capacitors() {
        return List.of(
                Box.between(85, 71, 94, GROUND, Style.PART),
                Line.of(89.5, 75, 89.5, 79, Style.EDGE),
                Line.of(86.5, 79, 92.5, 79, Style.MARK),
                Line.of(86.5, 81, 92.5, 81, Style.MARK),
                Line.of(89.5, 81, 89.5, 85, Style.EDGE));
    }

    private static List<Shape> receiver() {
        List<Point> points = new ArrayList<>();
        arc(points, 20, 86, 5, -90, 90);
        arc(points, 6, 86, 5, 90, 270);
        return List.of(new Outline(points, true, Style.STEEL));
    }

    private static List<Shape> valve() {
        return List.of(
                Line.of(25, 84, 41, 84, Style.EDGE),
                new Outline(
                        List.of(new Point(29, 82), new Point(33, 86), new Point(33, 82), new Point(29, 86)),
                        true,
                        Style.PART),
                Line.of(31, 84, 31, 80.5, Style.EDGE),
                Line.of(29, 80.5, 33, 80.5, Style.EDGE));
    }

    /** Blade under the return belt, its pole, and the spring that pushes it up. */
    private static List<Shape> cleaner() {
        double belt = returnAt(76);
        return List.of(
                Box.between(75, belt + 0.6, 77, belt + 3, Style.TIP),
                Line.of(76, belt + 3, 76, belt + 7, Style.EDGE),
                new Outline(
                        List.of(
                                new Point(74, belt + 7),
                                new Point(78, belt + 8.2),
                                new Point(74, belt + 9.4),
                                new Point(78, belt + 10.6),
                                new Point(74, belt + 11.8),
                                new Point(78, belt + 13)),
                        false,
                        Style.SPRING),
                Box.between(73, belt + 13, 81, belt + 14.4, Style.STEEL));
    }

    private static List<Shape> buttons() {
        return List.of(
                Box.between(64, 58, 69, 68, Style.PART),
                circle(66.5, 60.8, 1.5, Style.STEEL),
                circle(66.5, 65, 1.5, Style.TIP),
                Line.of(66.5, 68, 66.5, GROUND, Style.EDGE));
    }

    private static List<Shape> cord() {
        return List.of(
                Line.of(24, carryingAt(24) - 8, 86, carryingAt(86) - 8, Style.THIN),
                Line.of(24, carryingAt(24), 24, carryingAt(24) - 9, Style.EDGE),
                Line.of(86, carryingAt(86), 86, carryingAt(86) - 9, Style.EDGE),
                Box.between(22, carryingAt(24) - 11, 27, carryingAt(24) - 6, Style.PART));
    }

    private static List<Shape> selector() {
        return List.of(
                Box.between(34.5, 58, 40, 66, Style.PART),
                circle(37.2, 62, 1.8, Style.PART),
                Line.of(37.2, 62, 38.6, 60.2, Style.MARK),
                Line.of(37.2, 66, 37.2, GROUND, Style.EDGE));
    }

    private static List<Shape> load() {
        return List.of(new Outline(
                List.of(
                        new Point(42, carryingAt(42)),
                        new Point(48, carryingAt(48) - 4),
                        new Point(55, carryingAt(55) - 5),
                        new Point(62, carryingAt(62) - 4),
                        new Point(68, carryingAt(68))),
                true,
                Style.TIP));
    }

    private static List<Shape> horn() {
        return List.of(
                Line.of(10, 36, 10, GROUND, Style.EDGE),
                new Outline(
                        List.of(new Point(8, 33), new Point(14, 30.5), new Point(14, 37.5), new Point(8, 35)),
                        true,
                        Style.PART));
    }

    private static Shape circle(double x, double y, double radius, Style style) {
        List<Point> points = new ArrayList<>();
        arc(points, x, y, radius, 0, 360 - 360.0 / CORNERS);
        return new Outline(points, true, style);
    }

    /** Adds the corners of an arc; angles in degrees, clockwise from the right, because y runs downwards. */
    private static void arc(List<Point> points, double x, double y, double radius, double from, double to) {
        int steps = CORNERS;
        for (int step = 0; step <= steps; step++) {
            double angle = Math.toRadians(from + (to - from) * step / steps);
            points.add(new Point(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
        }
    }
}
