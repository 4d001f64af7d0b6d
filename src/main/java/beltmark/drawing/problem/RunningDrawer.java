package beltmark.drawing.problem;

import beltmark.core.problem.Part;
import beltmark.core.problem.bank.running.RunningScene;
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

/** Draws a running belt from below, to scale, and the weight that hangs in its take-up. All of it is told. */
final class RunningDrawer implements PartDrawer<RunningScene> {

    private static final double TEXT = 5;
    private static final double PAPER = 96;
    private static final double LEFT = 8;
    private static final double TOP = 20;
    private static final double BOTTOM = 52;
    private static final double LANE = 10;
    private static final double FIGURE = 1.2;
    private static final double WEIGHT = 14;

    @Override
    public List<Drawing> draw(RunningScene scene, Part part, Telling telling) {
        Words words = telling.words();
        if (part.id().equals("energy-weight") && scene.facts().get("height") instanceof Length height) {
            return List.of(weight(height, words));
        }
        return scene.beltWidth().compareTo(Length.ZERO) > 0 ? List.of(belt(scene, part, words)) : List.of();
    }

    private static Drawing belt(RunningScene scene, Part part, Words words) {
        boolean dirty = scene.findCard().isEmpty();
        double scale = Heights.scaleFor(scene.beltWidth(), PAPER, 1);
        double right = LEFT + scene.beltWidth().millimetres() / scale;
        double edge = (scene.beltWidth().millimetres() - scene.bladeWidth().millimetres()) / 2 / scale;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Box.between(LEFT, TOP, right, BOTTOM, Style.STEEL));
        shapes.add(
                dirty
                        ? Box.between(LEFT + edge, TOP, right - edge, BOTTOM, Style.TIP)
                        : Box.between(LEFT + edge, BOTTOM - 8, right - edge, BOTTOM - 3, Style.TIP));
        shapes.add(dimension("belt-width", scene.beltWidth(), Aligned.of(LEFT, TOP, right, TOP, LANE), words));
        shapes.add(dimension(
                dirty ? "dirty-width" : "blade",
                scene.bladeWidth(),
                Aligned.of(LEFT + edge, BOTTOM, right - edge, BOTTOM, -LANE),
                words));
        Map<String, Object> values = Map.of("belt", scene.beltWidth(), "inner", scene.bladeWidth());
        return new Drawing(
                "belt-" + part.id(),
                words.say(dirty ? "drawing-running.dirty.title" : "drawing-running.blade.title"),
                words.say(dirty ? "drawing-running.dirty.description" : "drawing-running.blade.description", values),
                right + LEFT,
                BOTTOM + LANE + 2 * TEXT,
                scale,
                TEXT,
                shapes);
    }

    private static Drawing weight(Length height, Words words) {
        double scale = Heights.scaleFor(height, PAPER / 2, 1);
        double foot = TOP + WEIGHT + height.millimetres() / scale;
        double under = TOP + WEIGHT;
        double middle = LEFT + WEIGHT;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Line.of(middle - 4, TOP - 14, middle - 4, TOP, Style.EDGE));
        shapes.add(Line.of(middle + 4, TOP - 14, middle + 4, TOP, Style.EDGE));
        shapes.add(Box.between(LEFT, TOP, LEFT + 2 * WEIGHT, under, Style.STEEL));
        shapes.add(Label.centred(middle, TOP + 9, words.say("drawing-running.weight.name"), Style.TEXT));
        shapes.add(Box.between(2, foot, 76, foot + 4, Style.STEEL));
        double x = LEFT + 2 * WEIGHT;
        Aligned line = Aligned.of(x, foot, x, under, -LANE);
        double beside = x + LANE + 2;
        shapes.add(line.dimension(
                "height",
                height,
                Label.from(beside, (under + foot) / 2 + TEXT / 2, words.length(height), Style.FIGURE)));
        return new Drawing(
                "take-up-weight",
                words.say("drawing-running.weight.title"),
                words.say("drawing-running.weight.description", Map.of("height", height)),
                80,
                foot + 8,
                scale,
                TEXT,
                shapes);
    }

    private static Shape dimension(String id, Length length, Aligned line, Words words) {
        boolean above = line.away() > 0;
        double x = line.on(0.5, 0).x();
        double y = line.on(0.5, 0).y() + (above ? -FIGURE : TEXT);
        return line.dimension(id, length, Label.centred(x, y, words.length(length), Style.FIGURE));
    }
}
