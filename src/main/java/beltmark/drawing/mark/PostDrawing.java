package beltmark.drawing.mark;

import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Lane;
import beltmark.drawing.Line;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A post on its foot plate with two marks: the height of one and the distance to the other are dimensioned, the height of
 * the other only once it may be told.
 *
 * @param start the mark whose height is given, above the foot plate
 * @param found the mark whose height is asked, above the foot plate
 */
public record PostDrawing(Level start, Level found) {

    private static final double TEXT = 5;
    private static final double WIDTH = 96;
    private static final double TOP = 12;
    private static final double PAPER = 100;
    private static final double POST_LEFT = 38;
    private static final double POST_RIGHT = 46;
    private static final double STROKE = 3;
    private static final double NAMES = 52;
    private static final double HEIGHT_LANE = 26;
    private static final double OTHER_LANE = 12;
    private static final double ABOVE = 1.5;
    private static final double PLATE = 3;

    /**
     * A mark on the post.
     *
     * @param id hyphenated name of the dimension of its height
     * @param height above the foot plate
     * @param name what stands beside it
     */
    public record Level(String id, Length height, String name) {}

    /**
     * Draws the post.
     *
     * @param id of the drawing
     * @param told whether the height that is asked may be told
     * @param words the reader's words
     * @return the drawing; lengths are in inches and sixteenths for everybody
     */
    public Drawing drawing(String id, boolean told, Words words) {
        Length highest = Length.max(start.height, found.height);
        double scale = Heights.scaleFor(highest, PAPER, 1);
        Heights heights = new Heights(TOP + highest.millimetres() / scale, scale);
        List<Shape> shapes = new ArrayList<>();
        double foot = heights.zero();
        shapes.add(Box.between(POST_LEFT, TOP - TEXT, POST_RIGHT, foot, Style.STEEL));
        shapes.add(Box.between(POST_LEFT - 2 * STROKE, foot, POST_RIGHT + 2 * STROKE, foot + PLATE, Style.STEEL));
        shapes.add(Label.from(NAMES, foot - ABOVE, words.say("drawing-mark.foot"), Style.TEXT));
        addMark(shapes, start, heights);
        addMark(shapes, found, heights);
        shapes.add(height(start, HEIGHT_LANE, heights, words));
        shapes.add(between(heights, words));
        if (told) {
            shapes.add(height(found, OTHER_LANE, heights, words));
        }
        return new Drawing(
                told ? id + "-worked" : id,
                words.say("drawing-mark.post.title"),
                new PostWords(this, words).description(told),
                WIDTH,
                foot + PLATE + 2,
                scale,
                TEXT,
                shapes);
    }

    private static void addMark(List<Shape> shapes, Level level, Heights heights) {
        double y = heights.y(level.height);
        shapes.add(Line.of(POST_LEFT - 1, y, POST_RIGHT + STROKE, y, Style.MARK));
        shapes.add(Label.from(NAMES, y - ABOVE, level.name, Style.STRONG));
    }

    private static Shape height(Level level, double x, Heights heights, Words words) {
        Lane lane = new Lane(x, 1, heights.zero(), TEXT);
        return lane.dimension(
                level.id,
                level.height,
                PostWords.inches(level.height, words),
                new Lane.End(heights.zero(), POST_LEFT - 2 * STROKE),
                new Lane.End(heights.y(level.height), POST_LEFT - 1));
    }

    private Shape between(Heights heights, Words words) {
        Length apart = found.height.minus(start.height).abs();
        Lane lane = new Lane(NAMES + 38, 1, heights.zero(), TEXT);
        return lane.dimension(
                "between",
                apart,
                PostWords.inches(apart, words),
                new Lane.End(heights.y(start.height), POST_RIGHT + STROKE),
                new Lane.End(heights.y(found.height), POST_RIGHT + STROKE));
    }
}
