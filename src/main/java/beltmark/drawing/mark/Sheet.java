package beltmark.drawing.mark;

import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Drawing;
import beltmark.drawing.Label;
import beltmark.drawing.Line;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A sheet that is being drawn on: the shapes so far, the scale, and the reader's words. */
final class Sheet {

    static final double TEXT = 5;
    private static final double FIGURE = 1.2;
    private static final double BOLT = 1.3;

    final double scale;
    final Words words;
    final List<Shape> shapes = new ArrayList<>();

    Sheet(double scale, Words words) {
        this.scale = scale;
        this.words = words;
    }

    double paper(Length length) {
        return length.millimetres() / scale;
    }

    void add(Shape shape) {
        shapes.add(shape);
    }

    void line(Point from, Point to, Style style) {
        shapes.add(new Line(from, to, style));
    }

    /** Draws a bolt head as a small square turned on its corner. */
    void bolt(Point at, Style style) {
        shapes.add(new Outline(
                List.of(
                        new Point(at.x() - BOLT, at.y()),
                        new Point(at.x(), at.y() - BOLT),
                        new Point(at.x() + BOLT, at.y()),
                        new Point(at.x(), at.y() + BOLT)),
                true,
                style));
    }

    /** Dimensions a level length, its figure centred above or below the line, whichever side the line is on. */
    void across(String id, Length length, Aligned line) {
        double y = line.on(0.5, 0).y() + (line.away() > 0 ? -FIGURE : TEXT);
        add(line.dimension(id, length, Label.centred(line.on(0.5, 0).x(), y, words.length(length), Style.FIGURE)));
    }

    /** Dimensions a length with its figure beginning at a place. */
    void dimension(String id, Length length, Aligned line, Label.Anchor anchor, double x, double y) {
        add(line.dimension(id, length, new Label(new Point(x, y), words.length(length), anchor, false, Style.FIGURE)));
    }

    Drawing drawing(String id, String topic, Map<String, ?> values, boolean told, double width, double height) {
        String seen = words.say("drawing-mark." + topic + ".description", values);
        return new Drawing(
                told ? id + "-worked" : id,
                words.say("drawing-mark." + topic + ".title"),
                told ? seen + " " + words.say("drawing-mark." + topic + ".worked", values) : seen,
                width,
                height,
                scale,
                TEXT,
                shapes);
    }
}
