package beltmark.drawing.spring;

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
import java.util.Map;

/** A cleaner pushed down from the belt by hand, seen along the travel. The drop is to scale. */
public final class PushedDown {

    private static final double TEXT = 5;
    private static final double WIDTH = 150;
    private static final double PAPER = 24;
    private static final double BELT = 14;
    private static final double BLADE = 12;
    private static final double POLE = 6;
    private static final double BLADE_FROM = 34;
    private static final double BLADE_TO = 116;
    private static final double SPRING_HALF = 6;
    private static final double SPRING = 26;
    private static final int TURNS = 5;
    private static final double LANE = 132;

    private PushedDown() {}

    /** {@return the cleaner at the end of the push} */
    public static Drawing of(Length drop, Words words) {
        double scale = Heights.scaleFor(drop, PAPER, 1);
        double tip = BELT + drop.millimetres() / scale;
        double pole = tip + BLADE;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Box.between(BLADE_FROM - 8, BELT - 4, BLADE_TO + 8, BELT, Style.BELT));
        shapes.add(Box.between(BLADE_FROM, tip, BLADE_TO, pole, Style.PART));
        shapes.add(Box.between(8, pole, WIDTH - 8, pole + POLE, Style.PART));
        addSpring(shapes, 18, pole + POLE);
        addSpring(shapes, WIDTH - 18, pole + POLE);
        double middle = WIDTH / 2;
        shapes.add(Line.of(middle, BELT + 3, middle, tip + 2, Style.EDGE));
        shapes.add(new Outline(
                List.of(new Point(middle, tip + 4), new Point(middle - 1.6, tip - 1), new Point(middle + 1.6, tip - 1)),
                true,
                Style.ARROW));
        shapes.add(Label.from(middle + 4, (BELT + tip) / 2 + 2, words.say("drawing-spring.push.push"), Style.TEXT));
        shapes.add(Label.from(BLADE_FROM, BELT - 6, words.say("drawing.belt"), Style.TEXT));
        shapes.add(Label.centred(middle, pole - 3, words.say("drawing.blade"), Style.TEXT));
        shapes.add(new Lane(LANE, 4, pole, TEXT)
                .dimension(
                        "drop",
                        drop,
                        words.length(drop),
                        new Lane.End(BELT, BLADE_TO + 8),
                        new Lane.End(tip, BLADE_TO)));
        return new Drawing(
                "bounce",
                words.say("drawing-spring.push.title"),
                words.say("drawing-spring.push.description", Map.of("drop", drop)),
                WIDTH,
                Math.ceil(pole + POLE + SPRING + 6),
                scale,
                TEXT,
                shapes);
    }

    private static void addSpring(List<Shape> shapes, double middle, double top) {
        List<Point> wire = new ArrayList<>();
        for (int i = 0; i <= 2 * TURNS; i++) {
            wire.add(new Point(middle + (i % 2 == 0 ? -SPRING_HALF : SPRING_HALF), top + SPRING * i / (2 * TURNS)));
        }
        shapes.add(new Outline(wire, false, Style.SPRING));
        shapes.add(Box.between(middle - 9, top + SPRING, middle + 9, top + SPRING + 3, Style.STEEL));
    }
}
