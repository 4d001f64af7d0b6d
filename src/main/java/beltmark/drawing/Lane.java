package beltmark.drawing;

import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * An upright strip of a sheet in which height dimensions stand one above the other, drawn in the manner of ISO 129-1
 * (sizes from secondary sources): extension lines leave a small gap to the object and run a little past the dimension
 * line, arrowheads are filled and three times as long as wide and turn outside where there is no room, and figures stand
 * above the line, to be read from the right, never crossed by a line.
 */
public final class Lane {

    private static final double GAP = 0.8;
    private static final double PAST = 1.5;
    private static final double ARROW_LENGTH = 3;
    private static final double ARROW_WIDTH = 1;
    private static final double TAIL = 5;
    private static final double ROOM_FOR_ARROWS = 2 * ARROW_LENGTH + 1;
    private static final double ABOVE_LINE = 1.1;

    private final double x;
    private final double textHeight;
    private final Clear clear;

    /** Makes a lane at {@code x} whose figures stay between the heights {@code top} and {@code bottom} of the sheet. */
    public Lane(double x, double top, double bottom, double textHeight) {
        this.x = x;
        this.textHeight = textHeight;
        this.clear = new Clear(top, bottom);
    }

    /** One end of a dimension: a height on the sheet, and where the object is whose edge lies at that height. */
    public record End(double y, double objectX) {}

    /** Keeps figures off a line that crosses this lane at a height. */
    public void keepOff(double y) {
        clear.block(y, y);
    }

    /** Keeps figures off everything between two heights. */
    public void keepOff(double y1, double y2) {
        clear.block(Math.min(y1, y2), Math.max(y1, y2));
    }

    /** {@return the dimension between two ends, its figure at the free place nearest to its middle} */
    public Dimension dimension(String id, Length length, String figure, End one, End other) {
        double top = Math.min(one.y(), other.y());
        double bottom = Math.max(one.y(), other.y());
        keepOff(top);
        keepOff(bottom);
        double width = TextWidth.of(figure, textHeight);
        double middle = clear.place((top + bottom) / 2, width);
        List<Shape> parts = new ArrayList<>();
        parts.add(extension(one));
        parts.add(extension(other));
        parts.add(Line.of(x, top, x, bottom, Style.MEASURE));
        addArrows(parts, top, bottom);
        addTail(parts, top, Math.min(top, middle - width / 2));
        addTail(parts, bottom, Math.max(bottom, middle + width / 2));
        Point at = new Point(x - ABOVE_LINE, middle);
        parts.add(new Label(at, figure, Label.Anchor.MIDDLE, true, Style.FIGURE));
        return new Dimension(id, length, parts);
    }

    private Line extension(End end) {
        double away = Math.signum(x - end.objectX());
        return Line.of(end.objectX() + away * GAP, end.y(), x + away * PAST, end.y(), Style.EXTENSION);
    }

    private void addArrows(List<Shape> parts, double top, double bottom) {
        boolean inside = bottom - top >= ROOM_FOR_ARROWS;
        double direction = inside ? 1 : -1;
        parts.add(arrow(top, direction));
        parts.add(arrow(bottom, -direction));
        if (!inside) {
            parts.add(Line.of(x, top, x, top - TAIL, Style.THIN));
            parts.add(Line.of(x, bottom, x, bottom + TAIL, Style.THIN));
        }
    }

    /** Runs the dimension line on under a figure that found no room between its ends. */
    private void addTail(List<Shape> parts, double end, double figureEnd) {
        if (end != figureEnd) {
            parts.add(Line.of(x, end, x, figureEnd, Style.THIN));
        }
    }

    private Outline arrow(double tip, double direction) {
        double back = tip + direction * ARROW_LENGTH;
        return new Outline(
                List.of(new Point(x, tip), new Point(x - ARROW_WIDTH / 2, back), new Point(x + ARROW_WIDTH / 2, back)),
                true,
                Style.ARROW);
    }
}
