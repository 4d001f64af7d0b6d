package beltmark.drawing.spring;

import beltmark.core.problem.bank.spring.UnevenScene;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.drawing.Box;
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

/**
 * A blade across the belt between its two springs, seen along the travel: widths to scale, and the line load along the
 * blade to a scale of its own once it is told.
 */
public final class LoadedBlade {

    private static final double TEXT = 5;
    private static final double WIDTH = 150;
    private static final double PAPER = 120;
    private static final double BELT = 10;
    /** Room above the belt for the line loads. */
    private static final double ROOM = 26;

    private static final double BLADE = 16;
    private static final double POLE = 5;
    private static final double ARROW = 22;
    private static final double HEIGHT = 68;
    /** How high the even line load is drawn. */
    private static final double EVEN = 6;
    /** The tallest line load that finds room. */
    private static final double TALLEST = 24;

    private final UnevenScene scene;
    private final Words words;
    private final double scale;
    private final double belt;
    private final List<Shape> shapes = new ArrayList<>();

    private LoadedBlade(UnevenScene scene, boolean told, Words words) {
        this.scene = scene;
        this.words = words;
        this.scale = scene.layout().span().millimetres() / PAPER;
        this.belt = told ? BELT + ROOM : BELT;
    }

    /**
     * Draws the blade.
     *
     * @param told whether the line loads are told
     */
    public static Drawing of(UnevenScene scene, boolean told, Words words) {
        LoadedBlade drawing = new LoadedBlade(scene, told, words);
        drawing.addBlade();
        drawing.addSpring(scene.left(), -1);
        drawing.addSpring(scene.right(), 1);
        if (told) {
            drawing.addLineLoads();
        }
        return drawing.drawing(told);
    }

    private double x(double fromMiddleMillimetres) {
        return WIDTH / 2 + fromMiddleMillimetres / scale;
    }

    private double bladeEnd(int side) {
        Length off = scene.layout().bladeOffCentre();
        return x(off.millimetres() + side * scene.layout().blade().millimetres() / 2);
    }

    private void addBlade() {
        double beyond = 14;
        shapes.add(Box.between(bladeEnd(-1) - beyond / 2, belt - 4, bladeEnd(1) + beyond / 2, belt, Style.BELT));
        shapes.add(Box.between(bladeEnd(-1), belt, bladeEnd(1), belt + BLADE, Style.PART));
        shapes.add(Box.between(5, belt + BLADE, WIDTH - 5, belt + BLADE + POLE, Style.PART));
        double middle = (bladeEnd(-1) + bladeEnd(1)) / 2;
        shapes.add(Line.of(middle, belt - 2, middle, belt + BLADE + POLE + 14, Style.CENTRE));
        shapes.add(Line.of(WIDTH / 2, belt + BLADE - 2, WIDTH / 2, belt + BLADE + POLE + 26, Style.CENTRE));
        shapes.add(Label.centred(
                middle, belt + BLADE + POLE + 19, words.say("drawing-spring.uneven.blade-middle"), Style.TEXT));
        shapes.add(Label.centred(
                WIDTH / 2, belt + BLADE + POLE + 31, words.say("drawing-spring.uneven.springs-middle"), Style.TEXT));
        shapes.add(Label.centred(bladeEnd(-1) + 14, belt + BLADE / 2 + 2, words.say("drawing.blade"), Style.TEXT));
    }

    private void addSpring(Force force, int sign) {
        double at = x(sign * scene.layout().span().millimetres() / 2);
        double pole = belt + BLADE + POLE;
        shapes.add(Line.of(at, pole + ARROW, at, pole, Style.EDGE));
        shapes.add(new Outline(
                List.of(new Point(at, pole), new Point(at - 1.6, pole + 5), new Point(at + 1.6, pole + 5)),
                true,
                Style.ARROW));
        String figure = words.quantity(force);
        shapes.add(Label.centred(at + sign * -2, pole + ARROW + 6, figure, Style.STRONG));
    }

    /** The line load is a trapezium, or a triangle on the part that still touches. */
    private void addLineLoads() {
        var ends = scene.ends().result();
        double even = scene.load().newtons() / scene.layout().blade().millimetres();
        double most = Math.max(ends.left().newtonsPerMillimetre(), ends.right().newtonsPerMillimetre());
        double perPaper = Math.max(even / EVEN, most / TALLEST);
        double left = ends.left().newtonsPerMillimetre() / perPaper;
        double right = ends.right().newtonsPerMillimetre() / perPaper;
        double contact = ends.contact().millimetres() / scale;
        boolean rightHeavy = right > left;
        double from = rightHeavy ? bladeEnd(1) - contact : bladeEnd(-1);
        double to = rightHeavy ? bladeEnd(1) : bladeEnd(-1) + contact;
        double floor = belt - 4;
        shapes.add(new Outline(
                List.of(
                        new Point(from, floor),
                        new Point(from, floor - left),
                        new Point(to, floor - right),
                        new Point(to, floor)),
                true,
                Style.CHOSEN));
        addEnd(bladeEnd(-1), ends.left());
        addEnd(bladeEnd(1), ends.right());
    }

    private void addEnd(double at, LineLoad load) {
        shapes.add(Label.centred(at, belt - 4 - TALLEST - 2, words.quantity(load), Style.STRONG));
    }

    private Drawing drawing(boolean told) {
        String seen =
                words.say("drawing-spring.uneven.description", Map.of("left", scene.left(), "right", scene.right()));
        var ends = scene.ends().result();
        return new Drawing(
                "uneven" + (told ? "-worked" : ""),
                words.say("drawing-spring.uneven.title"),
                told
                        ? seen + " "
                                + words.say(
                                        "drawing-spring.uneven.worked",
                                        Map.of("left", ends.left(), "right", ends.right()))
                        : seen,
                WIDTH,
                belt - BELT + HEIGHT,
                scale,
                TEXT,
                shapes);
    }
}
