package beltmark.drawing.mark;

import beltmark.core.geometry.Diagonals;
import beltmark.core.problem.bank.mark.BracketScene;
import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Label;
import beltmark.drawing.Point;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.Map;

/** Two marks on each side of the structure from above, with both diagonals, to scale; the belt travels upwards. */
public final class DiagonalDrawing {

    private static final double WIDTH = 128;
    private static final double LEFT = 36;
    private static final double PAPER = 82;
    private static final double TOP = 18;
    private static final double BEAM = 4;
    private static final double PAST = 5;
    private static final double STROKE = 2;

    private DiagonalDrawing() {}

    /** {@return the drawing; how far one side is ahead stands on it only when told} */
    public static Drawing of(BracketScene scene, boolean told, Words words) {
        BracketScene.Marks marks = scene.marks();
        Diagonals found =
                Diagonals.of(marks.first(), marks.second(), marks.along()).result();
        Sheet sheet = new Sheet(found.across().millimetres() / PAPER, words);
        double out = found.outOfSquare().millimetres() / sheet.scale;
        double along = sheet.paper(marks.along());
        Point leftRear = new Point(LEFT, TOP + along + Math.max(0, out));
        Point leftFront = new Point(LEFT, leftRear.y() - along);
        Point rightRear = new Point(LEFT + PAPER, leftRear.y() - out);
        Point rightFront = new Point(LEFT + PAPER, leftFront.y() - out);
        double bottom = Math.max(leftRear.y(), rightRear.y()) + PAST;
        sheet.add(Box.between(LEFT - BEAM, TOP - PAST, LEFT, bottom, Style.STEEL));
        sheet.add(Box.between(LEFT + PAPER, TOP - PAST, LEFT + PAPER + BEAM, bottom, Style.STEEL));
        for (Point mark : new Point[] {leftRear, leftFront, rightRear, rightFront}) {
            sheet.line(new Point(mark.x() - STROKE, mark.y()), new Point(mark.x() + STROKE, mark.y()), Style.MARK);
        }
        Aligned side = new Aligned(leftRear, leftFront, BEAM + 4);
        sheet.dimension(
                "along",
                marks.along(),
                side,
                Label.Anchor.END,
                side.on(0.5, 0).x() - 1.5,
                side.on(0.5, 0).y());
        diagonal(sheet, "first", marks.first(), new Aligned(leftRear, rightFront, 0), bottom);
        diagonal(sheet, "second", marks.second(), new Aligned(rightRear, leftFront, 0), bottom);
        Length ahead = found.outOfSquare().toLength();
        Map<String, Object> values = Map.of(
                "along", marks.along(),
                "first", marks.first(),
                "second", marks.second(),
                "side", words.say("drawing.side." + (ahead.isNegative() ? "left" : "right")),
                "out", ahead.abs());
        sheet.add(Label.centred(LEFT + PAPER / 2, 6, words.say("drawing-mark.diagonals.travel"), Style.TEXT));
        return sheet.drawing("bracket-diagonals", "diagonals", values, told, WIDTH, bottom + 9);
    }

    /** The figure stands below the rear end that the diagonal starts from. */
    private static void diagonal(Sheet sheet, String id, Length length, Aligned line, double bottom) {
        boolean left = line.from().x() < line.to().x();
        sheet.dimension(
                id,
                length,
                line,
                left ? Label.Anchor.START : Label.Anchor.END,
                line.from().x() + (left ? 2 : -2),
                bottom + 4);
    }
}
