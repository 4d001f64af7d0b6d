package beltmark.drawing.spring;

import beltmark.core.problem.bank.spring.AngleScene;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Lane;
import beltmark.drawing.Line;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;

/** A tip on a pivoted arm, as meant and with the pivot mounted low, to scale; seen from the pivot as mounted. */
public final class PivotedArm {

    private static final double TEXT = 5;
    private static final double WIDTH = 150;
    private static final double PAPER = 90;
    private static final double PIVOT_X = 26;
    private static final double TOP = 16;
    private static final double BELOW = 12;
    private static final double LANE = 132;
    private static final double OFF_LANE = 142;
    private static final double BELT_TO = 128;

    private PivotedArm() {}

    /** {@return the arm with what is given, and by how much it is turned once that is told} */
    public static Drawing of(AngleScene.Arm arm, Angle error, boolean told, Words words) {
        double scale = arm.length().millimetres() / PAPER;
        Length real = arm.height().plus(arm.low());
        Heights heights = new Heights(TOP + real.millimetres() / scale, scale);
        double pivot = heights.y(Length.ZERO);
        List<Shape> shapes = new ArrayList<>();
        addLevel(shapes, heights.y(real), words.say("drawing-spring.arm.real"), Style.BELT);
        addLevel(shapes, heights.y(arm.height()), words.say("drawing-spring.arm.meant"), Style.CENTRE);
        shapes.add(Line.of(PIVOT_X - 8, pivot, BELT_TO, pivot, Style.CENTRE));
        addArm(shapes, arm, arm.height(), heights, Style.ENVELOPE);
        addArm(shapes, arm, real, heights, Style.PART);
        shapes.add(Label.upTo(PIVOT_X - 3, pivot - 2, words.say("drawing-spring.arm.pivot"), Style.TEXT));
        Lane lane = new Lane(LANE, TOP, pivot + BELOW, TEXT);
        shapes.add(lane.dimension(
                "arm-height",
                arm.height(),
                words.length(arm.height()),
                new Lane.End(heights.y(arm.height()), BELT_TO),
                new Lane.End(pivot, BELT_TO)));
        Lane off = new Lane(OFF_LANE, 2, pivot + BELOW, TEXT);
        shapes.add(off.dimension(
                "arm-low",
                arm.low(),
                words.length(arm.low()),
                new Lane.End(heights.y(real), BELT_TO),
                new Lane.End(heights.y(arm.height()), BELT_TO)));
        if (told) {
            shapes.add(Label.from(PIVOT_X + 34, pivot - 3, words.quantity(error), Style.STRONG));
        }
        return new Drawing(
                "blade-angle-arm" + (told ? "-worked" : ""),
                words.say("drawing-spring.arm.title"),
                words.say("drawing-spring.arm.description"),
                WIDTH,
                Math.ceil(pivot + BELOW),
                scale,
                TEXT,
                shapes);
    }

    private static void addLevel(List<Shape> shapes, double y, String name, Style style) {
        shapes.add(
                style == Style.BELT
                        ? Box.between(PIVOT_X + 40, y - 3, BELT_TO, y, style)
                        : Line.of(PIVOT_X + 40, y, BELT_TO, y, style));
        shapes.add(Label.upTo(PIVOT_X + 38, style == Style.BELT ? y : y + 4, name, Style.TEXT));
    }

    private static void addArm(List<Shape> shapes, AngleScene.Arm arm, Length height, Heights heights, Style style) {
        double rise = height.millimetres() / arm.length().millimetres();
        double across = Math.sqrt(1 - rise * rise);
        double pivotY = heights.y(Length.ZERO);
        Point tip = new Point(PIVOT_X + PAPER * across, heights.y(height));
        double half = 1.8;
        shapes.add(new Outline(
                List.of(
                        new Point(PIVOT_X - half * rise, pivotY - half * across),
                        tip,
                        new Point(PIVOT_X + half * rise, pivotY + half * across)),
                true,
                style));
    }
}
