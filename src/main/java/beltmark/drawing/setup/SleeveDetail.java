package beltmark.drawing.setup;

import beltmark.core.setup.SleeveExposure;
import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Hatch;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Lane;
import beltmark.drawing.Line;
import beltmark.drawing.Outline;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The sleeve below the bushing, twice: while the belt runs, and while the tallest splice passes. What is fixed high or
 * low, the splice and the sleeve showing are to scale; the blade is drawn short.
 */
public final class SleeveDetail {

    private static final double TEXT = 4.7;
    private static final double EDGE = 1.5;
    private static final double COLUMN = 67;
    private static final double HEADING = 5;
    private static final double MARK_NAME = 11.5;
    private static final double POST_TOP = 14;
    private static final double BELT_TOP = 17;
    private static final double BELT = 20;
    private static final double BLADE = 26;
    private static final double POLE = 8;
    private static final double BUSHING = 12;
    private static final double MOUNT_MARK = 30;
    private static final double PLATE = 4;
    private static final double TIP = 3;
    private static final double POST_BOTTOM = 50;
    private static final double ROOM_FOR_SLEEVE = 65;
    private static final double ROOM_FOR_OFF = 9;
    private static final double HATCH_APART = 2;
    private static final double NOTE = 8;
    private static final double FIGURE = 25;
    private static final double NAME_APART = 5.5;

    private static final double OFF_LANE = 7;
    private static final double POST_FROM = 10;
    private static final double POST_TO = 16;
    private static final double BUSHING_FROM = 19;
    private static final double SLEEVE_FROM = 23;
    private static final double SLEEVE_TO = 30;
    private static final double BUSHING_TO = 34;
    private static final double SLEEVE_LANE = 42;
    private static final double BELT_FROM = 36;
    private static final double BLADE_FROM = 42;
    private static final double BLADE_TO = 50;
    private static final double BELT_TO = 56;
    private static final double SPLICE_LANE = 64;

    private final SleeveExposure sleeve;
    private final boolean told;
    private final Words words;
    private final double scale;
    private final double sleeveEnd;
    private final double height;
    private final List<Shape> shapes = new ArrayList<>();

    private SleeveDetail(SleeveExposure sleeve, boolean told, Words words) {
        this.sleeve = sleeve;
        this.told = told;
        this.words = words;
        double forSleeve =
                Heights.scaleFor(sleeve.asSet().plus(sleeve.mountedHigh().abs()), ROOM_FOR_SLEEVE, 1);
        double forOff = Heights.scaleFor(sleeve.mountedHigh().abs(), ROOM_FOR_OFF, 1);
        this.scale = Math.max(forSleeve, forOff);
        this.sleeveEnd = bushingBottom(Length.ZERO) + paper(sleeve.atRest());
        // a figure that is longer than the sleeve shows stands below it
        double forFigure = paper(sleeve.overSplice()) < FIGURE ? FIGURE : 0;
        double lowest = Math.max(sleeveEnd + forFigure, bushingBottom(sleeve.splice()) + 2 * NAME_APART);
        this.height = Math.ceil(lowest + 3 + NOTE);
    }

    /**
     * Draws the sleeve.
     *
     * @param sleeve what shows
     * @param told whether the sleeve showing is told; when not, only what is given is dimensioned
     * @param words the reader's words
     * @return the drawing
     */
    public static Drawing of(SleeveExposure sleeve, boolean told, Words words) {
        return new SleeveDetail(sleeve, told, words).drawing();
    }

    private Drawing drawing() {
        addColumn(EDGE, Length.ZERO, words.say("drawing.sleeve.at-rest"));
        addColumn(EDGE + COLUMN, sleeve.splice(), words.say("drawing.sleeve.over-splice"));
        if (!sleeve.isOnMark()) {
            addOffDimension();
        }
        addSpliceDimension();
        if (told) {
            addExposure(EDGE, "sleeve-at-rest", sleeve.atRest(), Length.ZERO);
            addExposure(EDGE + COLUMN, "sleeve-over-splice", sleeve.overSplice(), sleeve.splice());
        }
        shapes.add(Label.from(EDGE, height - 2, words.say("drawing.sleeve.scale-note"), Style.TEXT));
        return new Drawing(
                told ? "sleeve-worked" : "sleeve",
                words.say("drawing.sleeve.title"),
                description(),
                2 * (COLUMN + EDGE),
                height,
                scale,
                TEXT,
                shapes);
    }

    private double paper(Length length) {
        return length.millimetres() / scale;
    }

    private double poleTop(Length drop) {
        return BELT + BLADE + paper(drop);
    }

    private double bushingBottom(Length drop) {
        return poleTop(drop) + POLE / 2 + BUSHING / 2;
    }

    private double plateTop() {
        return MOUNT_MARK - paper(sleeve.mountedHigh());
    }

    private void addColumn(double left, Length drop, String heading) {
        addStructure(left);
        addBelt(left, drop);
        addMoving(left, drop);
        addNames(left, drop, heading);
    }

    private void addStructure(double left) {
        shapes.add(Box.between(left + POST_FROM, POST_TOP, left + POST_TO, POST_BOTTOM, Style.STEEL));
        shapes.add(Box.between(left + SLEEVE_FROM, plateTop() + PLATE, left + SLEEVE_TO, sleeveEnd, Style.PART));
        Box plate = Box.between(left + POST_TO, plateTop(), left + BUSHING_TO, plateTop() + PLATE, Style.SECTION);
        shapes.add(plate);
        shapes.add(Hatch.rising(plate, HATCH_APART));
        shapes.add(Line.of(left + POST_FROM - 1, MOUNT_MARK, left + POST_TO + 1, MOUNT_MARK, Style.MARK));
    }

    private void addBelt(double left, Length drop) {
        shapes.add(Outline.brokenBar(left + BELT_FROM, left + BELT_TO, BELT_TOP, BELT, Style.BELT));
        if (!drop.equals(Length.ZERO)) {
            Box splice = Box.between(left + BELT_FROM + 2, BELT, left + BELT_TO - 2, BELT + paper(drop), Style.SECTION);
            shapes.add(splice);
            shapes.add(Hatch.falling(splice, HATCH_APART));
            shapes.add(Label.upTo(left + BELT_FROM - 0.5, BELT - 0.5, words.say("drawing.sleeve.splice"), Style.TEXT));
            shapes.add(Line.of(left + BELT_FROM - 3, BELT + 0.3, left + BELT_FROM + 2.5, BELT + 2, Style.THIN));
        }
    }

    private void addMoving(double left, Length drop) {
        double tip = BELT + paper(drop);
        double top = poleTop(drop);
        shapes.add(Box.between(left + BLADE_FROM, tip, left + BLADE_TO, top, Style.PART));
        shapes.add(Box.between(left + BLADE_FROM, tip, left + BLADE_TO, tip + TIP, Style.TIP));
        shapes.add(Outline.brokenBar(left + BUSHING_TO, left + BELT_TO, top, top + POLE, Style.PART));
        double bottom = bushingBottom(drop);
        for (double from : new double[] {BUSHING_FROM, SLEEVE_TO}) {
            double width = from == BUSHING_FROM ? SLEEVE_FROM - BUSHING_FROM : BUSHING_TO - SLEEVE_TO;
            Box half = Box.between(left + from, bottom - BUSHING, left + from + width, bottom, Style.SECTION);
            shapes.add(half);
            shapes.add(Hatch.rising(half, HATCH_APART));
        }
    }

    private void addNames(double left, Length drop, String heading) {
        double bottom = bushingBottom(drop);
        double bushing = bottom + NAME_APART;
        double sleeveName = Math.max(sleeveEnd - 1, bushing + NAME_APART);
        shapes.add(Label.centred(left + COLUMN / 2, HEADING, heading, Style.STRONG));
        shapes.add(Label.from(left + BELT_FROM + 5, BELT_TOP - 1.5, words.say("drawing.belt"), Style.TEXT));
        shapes.add(Label.upTo(left + SLEEVE_FROM - 1, bushing, words.say("drawing.sleeve.bushing"), Style.TEXT));
        shapes.add(Line.of(left + SLEEVE_FROM - 4, bushing - 4, left + BUSHING_FROM + 1, bottom - 1, Style.THIN));
        shapes.add(Label.upTo(left + SLEEVE_FROM - 1, sleeveName, words.say("drawing.sleeve.sleeve"), Style.TEXT));
        shapes.add(Label.centred(
                left + (BLADE_TO + BELT_FROM) / 2,
                poleTop(drop) + POLE / 2 + TEXT * 0.35,
                words.say("drawing.pole"),
                Style.TEXT));
        shapes.add(Label.from(left + 1, MARK_NAME, words.say("drawing.mark.mount-mark"), Style.TEXT));
        double leader = left + (POST_FROM + POST_TO) / 2;
        shapes.add(Line.of(leader, MARK_NAME + 1, leader, MOUNT_MARK, Style.THIN));
    }

    private void addOffDimension() {
        Lane off = new Lane(EDGE + OFF_LANE, MARK_NAME + 1, height, TEXT);
        String id = sleeve.mountedHigh().isNegative() ? "mounted-low" : "mounted-high";
        shapes.add(off.dimension(
                id,
                sleeve.mountedHigh().abs(),
                words.length(sleeve.mountedHigh().abs()),
                new Lane.End(MOUNT_MARK, EDGE + POST_FROM),
                new Lane.End(plateTop(), EDGE + POST_TO)));
    }

    private void addSpliceDimension() {
        Lane splice = new Lane(EDGE + COLUMN + SPLICE_LANE, MARK_NAME, height, TEXT);
        shapes.add(splice.dimension(
                "splice",
                sleeve.splice(),
                words.length(sleeve.splice()),
                new Lane.End(BELT, EDGE + COLUMN + BELT_TO),
                new Lane.End(BELT + paper(sleeve.splice()), EDGE + COLUMN + BELT_TO - 2)));
    }

    private void addExposure(double left, String id, Length showing, Length drop) {
        Lane lane = new Lane(left + SLEEVE_LANE, poleTop(drop) + POLE, height - NOTE, TEXT);
        shapes.add(lane.dimension(
                id,
                showing,
                words.length(showing),
                new Lane.End(bushingBottom(drop), left + BUSHING_TO),
                new Lane.End(sleeveEnd, left + SLEEVE_TO)));
    }

    private String description() {
        Map<String, Length> values = Map.of(
                "off", sleeve.mountedHigh().abs(),
                "splice", sleeve.splice(),
                "atRest", sleeve.atRest(),
                "overSplice", sleeve.overSplice());
        String given = words.say("drawing.sleeve.given", values);
        if (!sleeve.isOnMark()) {
            given = words.say(
                            sleeve.mountedHigh().isNegative() ? "drawing.sleeve.off-low" : "drawing.sleeve.off-high",
                            values)
                    + " " + given;
        }
        return told ? given + " " + words.say("drawing.sleeve.worked", values) : given;
    }
}
