package beltmark.drawing.mark;

import beltmark.core.problem.bank.mark.CupScene;
import beltmark.core.setup.Side;
import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A cupped belt between its two posts, seen along the belt travel: heights are to scale, widths are not. Each post has the
 * height of its hanging edge beside it, and the belt mark once it may be told.
 */
public final class CupDrawing {

    private static final double WIDTH = 130;
    private static final double PAPER = 90;
    private static final double TOP = 16;
    private static final double FREE = 12;
    private static final double POST = 6;
    private static final double POST_AT = 30;
    private static final double BELT_AT = 40;
    private static final double BELT = 2;
    private static final double STROKE = 2;
    private static final int CHORDS = 24;

    private final CupScene scene;
    private final boolean told;
    private final Sheet sheet;
    private final Heights heights;
    private final double bottom;

    private CupDrawing(CupScene scene, boolean told, Words words) {
        this.scene = scene;
        this.told = told;
        Length low = Length.min(scene.edges().left(), scene.edges().right());
        Length high = Length.max(scene.beltMarks().left(), scene.beltMarks().right());
        double scale = Heights.scaleFor(high.minus(low), PAPER, 0.5);
        this.sheet = new Sheet(scale, words);
        this.heights = new Heights(TOP + high.millimetres() / scale, scale);
        this.bottom = heights.y(low) + FREE;
    }

    /** {@return the drawing; the belt marks stand on it only when told} */
    public static Drawing of(CupScene scene, String id, boolean told, Words words) {
        return new CupDrawing(scene, told, words).drawing(id);
    }

    private Drawing drawing(String id) {
        for (Side side : Side.values()) {
            addPost(side);
        }
        addBelt();
        Map<String, Object> values = Map.of(
                "left", scene.edges().left(),
                "right", scene.edges().right(),
                "cup", scene.cup(),
                "markLeft", scene.beltMarks().left(),
                "markRight", scene.beltMarks().right());
        sheet.add(Label.from(1.5, bottom + 10, sheet.words.say("drawing-mark.scale-note"), Style.TEXT));
        return sheet.drawing(id, "cup", values, told, WIDTH, bottom + 12).marked(heights);
    }

    private double x(Side side, double outboard) {
        return side == Side.LEFT ? outboard : WIDTH - outboard;
    }

    private void addPost(Side side) {
        sheet.add(Box.between(x(side, POST_AT), 7, x(side, POST_AT + POST), bottom, Style.STEEL));
        String name = sheet.words.say("drawing.side." + side.id());
        sheet.add(
                side == Side.LEFT
                        ? Label.from(1.5, 5, name, Style.STRONG)
                        : Label.upTo(WIDTH - 1.5, 5, name, Style.STRONG));
        addLevel(side, scene.edges().on(side), false);
        if (told) {
            addLevel(side, scene.beltMarks().on(side), true);
        }
    }

    /** A height beside the post: the hanging edge below its line, the belt mark above. */
    private void addLevel(Side side, Length height, boolean mark) {
        double y = heights.y(height);
        double end = x(side, 1.5);
        double from = x(side, POST_AT + POST + STROKE);
        sheet.line(new Point(end, y), new Point(from, y), Style.CENTRE);
        if (mark) {
            sheet.line(new Point(x(side, POST_AT - STROKE), y), new Point(from, y), Style.MARK);
        }
        double baseline = mark ? y - 1.3 : y + Sheet.TEXT;
        Style style = mark ? Style.STRONG : Style.TEXT;
        String figure = sheet.words.length(height);
        sheet.add(
                side == Side.LEFT
                        ? Label.from(end, baseline, figure, style)
                        : Label.upTo(end, baseline, figure, style));
    }

    /** The underside is an arch whose middle is the cup above the line from edge to edge. */
    private void addBelt() {
        double left = heights.y(scene.edges().left());
        double right = heights.y(scene.edges().right());
        double from = BELT_AT;
        double to = WIDTH - BELT_AT;
        List<Point> under = new ArrayList<>();
        List<Point> over = new ArrayList<>();
        for (int i = 0; i <= CHORDS; i++) {
            double share = (double) i / CHORDS;
            double y = left + (right - left) * share - 4 * share * (1 - share) * sheet.paper(scene.cup());
            under.add(new Point(from + (to - from) * share, y));
            over.add(0, new Point(from + (to - from) * share, y - BELT));
        }
        under.addAll(over);
        sheet.add(new Outline(under, true, Style.BELT));
        sheet.line(new Point(from, left), new Point(to, right), Style.CENTRE);
        double middle = (left + right) / 2;
        Aligned cup = Aligned.of(WIDTH / 2, middle, WIDTH / 2, middle - sheet.paper(scene.cup()), -16);
        sheet.dimension("cup", scene.cup(), cup, Label.Anchor.MIDDLE, WIDTH / 2, middle + 2 * Sheet.TEXT);
    }
}
