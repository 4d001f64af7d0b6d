package beltmark.drawing.spring;

import beltmark.core.problem.bank.spring.AngleScene;
import beltmark.core.units.Angle;
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
 * A blade under a belt with a protractor laid along the belt, or with a plumb line beside it. All angles are true; the
 * scale counts from the side the belt comes from, the inner one from the other side, as on any protractor.
 */
public final class BeltAngle {

    private static final double TEXT = 5;
    private static final double WIDTH = 156;
    private static final double HEIGHT = 106;
    private static final double RADIUS = 62;
    private static final double OUTER = 68;
    private static final double INNER = 46;
    private static final double BELT = 5;
    private static final double BELT_HALF = 74;
    private static final double BLADE = 40;
    private static final double BLADE_HALF = 2;
    /** How long the name of the travel is, so that it keeps clear of a sloping belt. */
    private static final double TRAVEL_NAME = 32;

    private static final double TEN = 10;
    private static final double STRAIGHT = 180;
    private static final double TO_BASELINE = TEXT * 0.35;

    private final Words words;
    private final Turned sheet;
    private final List<Shape> shapes = new ArrayList<>();

    private BeltAngle(double slope, double top, Words words) {
        this.words = words;
        this.sheet = new Turned(new Point(WIDTH / 2, top), Math.toRadians(slope));
        addBelt();
    }

    /** {@return the blade as it stands, with the protractor; the reading is written beside it once it is told} */
    public static Drawing protractor(AngleScene scene, boolean told, Words words) {
        BeltAngle drawing = new BeltAngle(0, 20, words);
        drawing.addScale();
        drawing.addBlade(scene.present(), Style.PART);
        drawing.addReadingEdge(scene.present());
        if (told) {
            drawing.addFigure(scene.present().degrees() / 2, 32, scene.present());
        }
        return drawing.drawing("protractor", told, HEIGHT - 4, drawing.heard(scene.present(), told));
    }

    /** {@return the blade as it is wanted, dashed, beside the one that stands; for the part that turns it} */
    public static Drawing turn(AngleScene scene, boolean told, Words words) {
        BeltAngle drawing = new BeltAngle(0, 20, words);
        drawing.addBlade(scene.present(), Style.PART);
        if (told) {
            drawing.addBlade(scene.wanted(), Style.CHOSEN);
            drawing.addFigure(scene.wanted().degrees() / 2, 32, scene.wanted());
        }
        return drawing.drawing("turn", told, 72, "");
    }

    /** {@return the blade as wanted under the sloping belt, with a plumb line; its lean once it is told} */
    public static Drawing plumb(AngleScene scene, Angle lean, boolean told, Words words) {
        BeltAngle drawing = new BeltAngle(scene.slope().degrees(), 36, words);
        drawing.addBlade(scene.wanted(), Style.PART);
        drawing.addFigure(scene.wanted().degrees() / 2, 30, scene.wanted());
        Point tip = drawing.sheet.centre();
        drawing.shapes.add(Line.of(tip.x(), tip.y() - 4, tip.x(), tip.y() + 60, Style.CENTRE));
        drawing.shapes.add(
                Label.centred(tip.x(), tip.y() + 66, words.say("drawing-spring.angle.plumb-line"), Style.TEXT));
        if (told) {
            double side = scene.wanted().degrees() + scene.slope().degrees() > 90 ? 1 : -1;
            String figure = words.quantity(lean);
            Point at = new Point(tip.x() + side * 14, tip.y() + 52);
            drawing.shapes.add(
                    side > 0
                            ? Label.from(at.x(), at.y(), figure, Style.STRONG)
                            : Label.upTo(at.x(), at.y(), figure, Style.STRONG));
        }
        return drawing.drawing("plumb", told, HEIGHT, "");
    }

    private void addBelt() {
        shapes.add(new Outline(
                List.of(
                        sheet.at(-BELT_HALF, -BELT),
                        sheet.at(BELT_HALF, -BELT),
                        sheet.at(BELT_HALF, 0),
                        sheet.at(-BELT_HALF, 0)),
                true,
                Style.BELT));
        Point arrow = sheet.at(8, -BELT - 3);
        Point head = sheet.at(24, -BELT - 3);
        shapes.add(new Line(arrow, head, Style.EDGE));
        shapes.add(new Outline(List.of(head, sheet.at(19, -BELT - 4.6), sheet.at(19, -BELT - 1.4)), true, Style.ARROW));
        Point name = sheet.at(4, -BELT - 3);
        double clear = Math.abs(Math.sin(sheet.slopeRadians())) * TRAVEL_NAME;
        shapes.add(Label.upTo(name.x(), name.y() + 1 - clear, words.say("drawing-spring.angle.travel"), Style.TEXT));
    }

    private void addScale() {
        List<Point> rim = new ArrayList<>();
        rim.add(sheet.at(0, RADIUS - 28, 0));
        for (int degrees = 0; degrees <= STRAIGHT; degrees++) {
            rim.add(sheet.at(degrees, RADIUS, 0));
        }
        shapes.add(new Outline(rim, false, Style.THIN));
        for (int degrees = 0; degrees <= STRAIGHT; degrees++) {
            double tick = degrees % TEN == 0 ? 9 : degrees % 5 == 0 ? 6 : 3.5;
            shapes.add(new Line(sheet.at(degrees, RADIUS - tick, 0), sheet.at(degrees, RADIUS, 0), Style.GRADUATION));
            if (degrees % TEN == 0) {
                addNumber(degrees, OUTER, degrees);
            }
            if (degrees % 30 == 0 && degrees % STRAIGHT != 0) {
                addNumber(degrees, INNER, (int) STRAIGHT - degrees);
            }
        }
    }

    private void addNumber(int degrees, double radius, int number) {
        Point at = sheet.at(Math.max(2, Math.min(STRAIGHT - 2, degrees)), radius, 0);
        shapes.add(Label.centred(at.x(), at.y() + TO_BASELINE, "" + number, Style.NUMBER));
    }

    private void addBlade(Angle toBelt, Style style) {
        shapes.add(sheet.bar(toBelt.degrees(), 0.5, BLADE, BLADE_HALF, style));
    }

    private void addReadingEdge(Angle toBelt) {
        shapes.add(new Line(sheet.at(toBelt.degrees(), BLADE, 0), sheet.at(toBelt.degrees(), RADIUS, 0), Style.EDGE));
    }

    private void addFigure(double degrees, double radius, Angle angle) {
        Point at = sheet.at(degrees, radius, 0);
        shapes.add(Label.centred(at.x(), at.y() + TO_BASELINE, words.quantity(angle), Style.STRONG));
    }

    /** Counts graduations, as one does who sees them, and leaves the adding up to the reader. */
    private String heard(Angle reading, boolean told) {
        int tens = (int) (Math.floor(reading.degrees() / TEN) * TEN);
        int count = (int) Math.round(reading.degrees() - tens);
        String where = words.say("drawing-spring.angle.where", Map.of("tens", "" + tens, "count", count));
        return " " + (told ? words.say("drawing-spring.angle.reading", Map.of("reading", reading)) : where);
    }

    private Drawing drawing(String kind, boolean told, double height, String heard) {
        return new Drawing(
                "blade-angle-" + kind + (told ? "-worked" : ""),
                words.say("drawing-spring.angle." + kind + ".title"),
                words.say("drawing-spring.angle." + kind + ".description") + heard,
                WIDTH,
                height,
                1,
                TEXT,
                shapes);
    }
}
