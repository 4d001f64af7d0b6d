package beltmark.drawing.mark;

import beltmark.core.geometry.SlopingBelt;
import beltmark.core.problem.bank.mark.SlopingScene;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.List;
import java.util.Map;

/** The offset on a sloping belt, to scale: square to the belt, and the plumb line from its upper end. */
public final class SlopingDrawing {

    private static final double WIDTH = 124;
    private static final double PAPER = 60;
    private static final double MARK_X = 66;
    private static final double REACH = 48;
    private static final double BELT = 2;
    private static final double TOP = 14;

    private SlopingDrawing() {}

    /** {@return the drawing of a part; the shift along the belt stands on it only when told} */
    public static Drawing of(SlopingScene scene, String id, boolean told, Words words) {
        Length offset = scene.mounting().offset();
        Length shift =
                SlopingBelt.of(offset, scene.slope()).result().shiftAlong().toLength();
        Sheet sheet = new Sheet(Heights.scaleFor(offset, PAPER, 0.5), words);
        Angle slope = scene.slope();
        double square = sheet.paper(offset);
        Point mark = new Point(MARK_X, TOP + square * slope.cos() + 4);
        Point top = new Point(mark.x() - square * slope.sin(), mark.y() - square * slope.cos());
        Point foot = along(mark, -sheet.paper(shift), slope);
        addBelt(sheet, mark, slope);
        sheet.line(mark, top, Style.MARK);
        sheet.line(top, new Point(foot.x(), foot.y() + 3), Style.CENTRE);
        sheet.add(Label.upTo(top.x() - 2, top.y() + 1, words.say("drawing-mark.sloping.plumb"), Style.TEXT));
        Aligned line = Aligned.of(mark.x(), mark.y(), top.x(), top.y(), -12);
        Point figure = line.on(0.5, 0);
        sheet.dimension("offset", offset, line, Label.Anchor.START, figure.x() + 2, figure.y());
        double low = along(mark, -REACH, slope).y() + 8;
        if (told) {
            Aligned under = Aligned.of(foot.x(), foot.y(), mark.x(), mark.y(), -12);
            sheet.dimension(
                    "shift",
                    shift,
                    under,
                    Label.Anchor.START,
                    under.on(0.5, 0).x() + 4,
                    under.on(0.5, 0).y() + 7);
            low = Math.max(low, under.on(0.5, 0).y() + 9);
        }
        Map<String, Object> values = Map.of("slope", slope, "offset", offset, "shift", shift);
        return sheet.drawing(id, "sloping", values, told, WIDTH, low + 6);
    }

    /** The belt line is the underside; the belt lies on it. */
    private static void addBelt(Sheet sheet, Point mark, Angle slope) {
        Point low = along(mark, -REACH, slope);
        Point high = along(mark, REACH, slope);
        sheet.add(new Outline(
                List.of(low, high, new Point(high.x(), high.y() + BELT), new Point(low.x(), low.y() + BELT)),
                true,
                Style.BELT));
        sheet.add(Label.from(
                1.5, low.y() + 10, sheet.words.say("drawing-mark.sloping.belt", Map.of("slope", slope)), Style.TEXT));
    }

    /** A place further up the belt; down the belt when negative. */
    static Point along(Point from, double paper, Angle slope) {
        return new Point(from.x() + paper * slope.cos(), from.y() - paper * slope.sin());
    }
}
