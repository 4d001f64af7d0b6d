package beltmark.drawing;

import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * A dimension of any direction, drawn in the manner of ISO 129-1 (sizes from secondary sources): its line runs beside what
 * is measured, extension lines leave a small gap to the object and run a little past the line, arrowheads are filled and
 * turn outside where there is no room. The figure stands level beside the line, so that it can be read on a phone.
 *
 * @param from one end of what is measured
 * @param to the other end
 * @param away how far to the left of the way from one end to the other the line lies, in millimetres of paper; negative to
 *     the right, 0 on the object itself
 */
public record Aligned(Point from, Point to, double away) {

    private static final double GAP = 0.8;
    private static final double PAST = 1.5;
    private static final double ARROW_LENGTH = 3;
    private static final double ARROW_HALF = 0.5;
    private static final double TAIL = 5;
    private static final double ROOM_FOR_ARROWS = 2 * ARROW_LENGTH + 1;

    /** {@return the dimension between two places, its line that far to the left of the way from one to the other} */
    public static Aligned of(double x1, double y1, double x2, double y2, double away) {
        return new Aligned(new Point(x1, y1), new Point(x2, y2), away);
    }

    /**
     * Draws it.
     *
     * @param id hyphenated name of what is dimensioned
     * @param length what the figure says
     * @param figure the label that says it, placed by whoever knows what else is there
     * @return the dimension
     */
    public Dimension dimension(String id, Length length, Label figure) {
        List<Shape> parts = new ArrayList<>();
        if (away != 0) {
            parts.add(extension(from));
            parts.add(extension(to));
        }
        Point start = beside(from, away);
        Point end = beside(to, away);
        parts.add(new Line(start, end, Style.MEASURE));
        boolean inside = size() >= ROOM_FOR_ARROWS;
        parts.add(arrow(start, inside ? 1 : -1));
        parts.add(arrow(end, inside ? -1 : 1));
        if (!inside) {
            parts.add(new Line(start, along(start, -TAIL), Style.THIN));
            parts.add(new Line(end, along(end, TAIL), Style.THIN));
        }
        parts.add(figure);
        return new Dimension(id, length, parts);
    }

    /** {@return the place on the dimension line, a share of the way along it and that much further away from the object} */
    public Point on(double share, double further) {
        return along(beside(from, away + Math.copySign(further, away)), share * size());
    }

    private double size() {
        return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    private Line extension(Point object) {
        return new Line(
                beside(object, Math.copySign(GAP, away)),
                beside(object, away + Math.copySign(PAST, away)),
                Style.EXTENSION);
    }

    private Outline arrow(Point tip, double direction) {
        Point back = along(tip, direction * ARROW_LENGTH);
        return new Outline(List.of(tip, beside(back, ARROW_HALF), beside(back, -ARROW_HALF)), true, Style.ARROW);
    }

    /** The left of somebody who walks from one end to the other; the sheet's y runs downwards. */
    private Point beside(Point place, double left) {
        return new Point(
                place.x() + left * (to.y() - from.y()) / size(), place.y() - left * (to.x() - from.x()) / size());
    }

    private Point along(Point place, double on) {
        return new Point(place.x() + on * (to.x() - from.x()) / size(), place.y() + on * (to.y() - from.y()) / size());
    }
}
