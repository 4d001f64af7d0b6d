package beltmark.drawing.mark;

import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Line;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The two walls of a frame and the line midway between them.
 *
 * @param width from wall to wall
 * @param half from the left wall to the line
 */
public record MiddleDrawing(Length width, Length half) {

    private static final double TEXT = 5;
    private static final double PAPER = 90;
    private static final double WALL = 5;
    private static final double LEFT = 8;
    private static final double TOP = 20;
    private static final double BOTTOM = 44;
    private static final double LANE = 10;
    private static final double FIGURE = 1.2;

    /**
     * Draws the frame.
     *
     * @param told whether the half may be told
     * @param words the reader's words
     * @return the drawing; lengths are in inches and sixteenths for everybody
     */
    public Drawing drawing(boolean told, Words words) {
        double scale = Heights.scaleFor(width, PAPER, 1);
        double right = LEFT + width.millimetres() / scale;
        double middle = LEFT + half.millimetres() / scale;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Box.between(LEFT - WALL, TOP, LEFT, BOTTOM, Style.STEEL));
        shapes.add(Box.between(right, TOP, right + WALL, BOTTOM, Style.STEEL));
        shapes.add(Line.of(middle, TOP - 4, middle, BOTTOM + 4, Style.CENTRE));
        shapes.add(Label.from(middle + 2, TOP + 2 * TEXT, words.say("drawing-mark.middle.line"), Style.TEXT));
        shapes.add(dimension("width", width, Aligned.of(LEFT, TOP, right, TOP, LANE), words));
        if (told) {
            shapes.add(dimension("half", half, Aligned.of(LEFT, BOTTOM, middle, BOTTOM, -LANE), words));
        }
        Map<String, String> values =
                Map.of("width", PostWords.inches(width, words), "half", PostWords.inches(half, words));
        String seen = words.say("drawing-mark.middle.description", values);
        return new Drawing(
                told ? "middle-worked" : "middle",
                words.say("drawing-mark.middle.title"),
                told ? seen + " " + words.say("drawing-mark.middle.worked", values) : seen,
                right + LEFT + WALL,
                BOTTOM + LANE + 2 * TEXT,
                scale,
                TEXT,
                shapes);
    }

    private static Shape dimension(String id, Length length, Aligned line, Words words) {
        boolean above = line.away() > 0;
        double x = line.on(0.5, 0).x();
        double y = line.on(0.5, 0).y() + (above ? -FIGURE : TEXT);
        return line.dimension(id, length, Label.centred(x, y, PostWords.inches(length, words), Style.FIGURE));
    }
}
