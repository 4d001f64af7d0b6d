package beltmark.drawing.mark;

import beltmark.core.geometry.SlopingBelt;
import beltmark.core.problem.bank.mark.BracketScene;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Point;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.Map;

/** A bracket that was plumbed on a sloping belt, to scale: its two bolts in their slots, which run along the belt. */
public final class BoltDrawing {

    private static final double WIDTH = 126;
    private static final double PAPER = 55;
    private static final double FIXED_X = 72;
    private static final double REACH = 38;
    private static final double TOP = 18;

    private BoltDrawing() {}

    /** {@return the drawing; where the bolt goes stands on it only when told} */
    public static Drawing of(BracketScene scene, boolean told, Words words) {
        Length shift = SlopingBelt.of(scene.bolts(), scene.slope())
                .result()
                .shiftAlong()
                .toLength();
        Sheet sheet = new Sheet(Heights.scaleFor(scene.bolts(), PAPER, 1), words);
        Angle slope = scene.slope();
        double square = sheet.paper(scene.bolts());
        double rise = REACH * slope.sin();
        Point fixed = new Point(FIXED_X, scene.upperRight() ? TOP + rise : TOP + rise + square / slope.cos());
        double down = scene.upperRight() ? 1 : -1;
        Point plumbed = new Point(fixed.x(), fixed.y() + down * square / slope.cos());
        Point right = new Point(fixed.x() + down * square * slope.sin(), fixed.y() + down * square * slope.cos());
        addSlot(sheet, fixed, slope);
        addSlot(sheet, plumbed, slope);
        sheet.line(fixed, plumbed, Style.EDGE);
        sheet.bolt(fixed, Style.TIP);
        sheet.bolt(plumbed, Style.PART);
        addGiven(sheet, scene, fixed, slope);
        if (told) {
            sheet.bolt(right, Style.TIP);
            sheet.line(fixed, right, Style.CENTRE);
            Aligned line = Aligned.of(plumbed.x(), plumbed.y(), right.x(), right.y(), -8);
            Point at = line.on(0.5, 0);
            double y = scene.upperRight() ? at.y() + 7 : at.y() - 3;
            sheet.dimension("by", shift, line, Label.Anchor.MIDDLE, at.x(), y);
        }
        double bottom = Math.max(fixed.y(), plumbed.y()) + rise + 18;
        Map<String, Object> values = Map.of("slope", slope, "bolts", scene.bolts(), "by", shift);
        return sheet.drawing("bracket-bolt", "bolt", values, told, WIDTH, bottom);
    }

    private static void addSlot(Sheet sheet, Point bolt, Angle slope) {
        sheet.line(SlopingDrawing.along(bolt, -REACH, slope), SlopingDrawing.along(bolt, REACH, slope), Style.CENTRE);
    }

    /** How far the slots are apart is told at their lower ends, away from where the bolt belongs. */
    private static void addGiven(Sheet sheet, BracketScene scene, Point fixed, Angle slope) {
        double square = sheet.paper(scene.bolts());
        Point upper = scene.upperRight()
                ? fixed
                : new Point(fixed.x() - square * slope.sin(), fixed.y() - square * slope.cos());
        Point end = SlopingDrawing.along(upper, -REACH + 4, slope);
        Point lower = new Point(end.x() + square * slope.sin(), end.y() + square * slope.cos());
        Aligned line = Aligned.of(end.x(), end.y(), lower.x(), lower.y(), 0);
        Point at = line.on(0.5, 0);
        sheet.dimension("bolts", scene.bolts(), line, Label.Anchor.END, at.x() - 2, at.y());
        sheet.add(Label.from(
                1.5, 5, sheet.words.say("drawing-mark.bolt.slope", Map.of("slope", scene.slope())), Style.TEXT));
    }
}
