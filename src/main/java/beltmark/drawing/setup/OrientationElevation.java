package beltmark.drawing.setup;

import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Hatch;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Line;
import beltmark.drawing.Style;
import beltmark.drawing.TextWidth;
import beltmark.texts.Words;

/** Both ways of mounting a tensioner, side by side in the same surroundings. */
final class OrientationElevation {

    private static final double EDGE = 1.5;
    private static final double BAND = 8;
    private static final double NOTE = 8;
    private static final double COLUMN = 55;
    private static final double SIGN = 4;
    private static final double HATCH_APART = 3;
    /** How far the name of an obstacle runs on over the post, to keep clear of a figure in the lane on its left. */
    private static final double PAST_OBSTACLE = 1.6;

    private final Situation situation;
    private final boolean worked;
    private final Words words;
    private final Elevation sheet;
    private final GivenHeights givens;
    private final Column overslung;
    private final Column underslung;
    private final double height;

    OrientationElevation(Situation situation, boolean worked, Words words) {
        this.situation = situation;
        this.worked = worked;
        this.words = words;
        Surroundings place = situation.surroundings();
        Reach range = range();
        double scale = Elevation.scale(range);
        double above = Math.max(paper(place.roof(), scale) + BAND, paper(range.high(), scale) + EDGE);
        double below = Math.max(paper(place.floor().negated(), scale) + BAND, -paper(range.low(), scale) + EDGE);
        double heading = (worked ? 2 : 1) * Elevation.LINE_APART + 2;
        this.sheet = new Elevation(new Heights(heading + above, scale), words);
        this.height = Math.ceil(heading + above + below + NOTE);
        this.givens = new GivenHeights(place, sheet, height - NOTE);
        this.overslung = new Column(givens.width(), 1, columnWidth(words));
        this.underslung = new Column(overslung.right() + EDGE, 1, overslung.width());
    }

    /** {@return the usual width, or what the name of the belt mark needs right of the post} */
    private static double columnWidth(Words words) {
        String name = words.say("drawing.mark.belt-mark");
        return Math.max(COLUMN, Elevation.MARK_NAME_AT + TextWidth.of(name, Elevation.TEXT));
    }

    Drawing drawing() {
        addSurroundings();
        for (Orientation orientation : Orientation.values()) {
            addColumn(orientation);
        }
        addObstacles();
        addNames();
        sheet.shapes.addAll(givens.dimensions(words));
        if (worked) {
            addVerdicts();
        }
        ElevationWords spoken = new ElevationWords(situation, words);
        return new Drawing(
                worked ? "orientation-worked" : "orientation",
                words.say("drawing.orientation.title"),
                worked ? spoken.choice() : spoken.surroundings(),
                underslung.right() + EDGE,
                height,
                sheet.heights.scale(),
                Elevation.TEXT,
                sheet.shapes);
    }

    private static double paper(Length length, double scale) {
        return length.millimetres() / scale;
    }

    private Reach range() {
        Length high = situation.surroundings().roof();
        Length low = situation.surroundings().floor();
        for (Orientation orientation : Orientation.values()) {
            high = Length.max(high, reach(orientation).high());
            low = Length.min(low, reach(orientation).low());
        }
        return new Reach(low, high);
    }

    private Reach reach(Orientation orientation) {
        return situation.card().reachFromBeltMark(situation.tip(), orientation);
    }

    private Column column(Orientation orientation) {
        return orientation == Orientation.OVERSLUNG ? overslung : underslung;
    }

    private void addSurroundings() {
        double roof = sheet.heights.y(situation.surroundings().roof());
        double floor = sheet.heights.y(situation.surroundings().floor());
        for (double top : new double[] {roof - BAND, floor}) {
            Box band = Box.between(overslung.left(), top, underslung.right(), top + BAND, Style.SECTION);
            sheet.shapes.add(band);
            sheet.shapes.add(Hatch.rising(band, HATCH_APART));
        }
    }

    private void addColumn(Orientation orientation) {
        Column column = column(orientation);
        sheet.addPost(
                column,
                sheet.heights.y(situation.surroundings().roof()),
                sheet.heights.y(situation.surroundings().floor()));
        sheet.addBelt(column);
        sheet.addTensioner(column, situation, orientation);
        boolean chosen = worked
                && situation.orientation().chosen().filter(orientation::equals).isPresent();
        sheet.addEnvelope(column, reach(orientation), chosen ? Style.CHOSEN : Style.ENVELOPE);
        sheet.shapes.add(Line.of(column.left(), sheet.zero(), column.x(Column.BELT_FROM), sheet.zero(), Style.CENTRE));
        sheet.addMark(column, sheet.zero());
        sheet.addNames(column, situation);
        sheet.addMarkName(column);
        sheet.shapes.add(Label.from(
                column.x(Column.OBSTACLE_FROM),
                Elevation.LINE_APART - 1,
                words.say("drawing.orientation." + orientation.id()),
                Style.STRONG));
    }

    private void addObstacles() {
        for (Reach obstacle : situation.surroundings().obstacles()) {
            for (Column column : new Column[] {overslung, underslung}) {
                Box box = Box.between(
                        column.x(Column.OBSTACLE_FROM),
                        sheet.heights.y(obstacle.high()),
                        column.x(Column.OBSTACLE_TO),
                        sheet.heights.y(obstacle.low()),
                        Style.OBSTACLE);
                sheet.shapes.add(box);
                sheet.shapes.add(Hatch.rising(box, HATCH_APART));
                sheet.shapes.add(Hatch.falling(box, HATCH_APART));
                double middle = box.corner().y() + box.height() / 2;
                sheet.shapes.add(Label.upTo(
                        box.right() + PAST_OBSTACLE,
                        middle + Elevation.TEXT * Elevation.TO_BASELINE,
                        words.say("drawing.obstacle"),
                        Style.TEXT));
            }
        }
    }

    private void addNames() {
        double baseline = BAND / 2 + Elevation.TEXT * Elevation.TO_BASELINE;
        double x = overslung.x(Column.BELT_FROM + 2);
        double roof = sheet.heights.y(situation.surroundings().roof()) - BAND;
        double floor = sheet.heights.y(situation.surroundings().floor());
        sheet.shapes.add(Label.from(x, roof + baseline, words.say("drawing.roof"), Style.TEXT));
        sheet.shapes.add(Label.from(x, floor + baseline, words.say("drawing.floor"), Style.TEXT));
        sheet.shapes.add(Label.from(EDGE, height - 2, words.say("drawing.scale-note"), Style.TEXT));
    }

    private void addVerdicts() {
        OrientationChoice choice = situation.orientation();
        for (Orientation orientation : Orientation.values()) {
            Column column = column(orientation);
            Fit fit = Fit.of(choice, orientation);
            double x = column.x(Column.OBSTACLE_FROM);
            double baseline = 2 * Elevation.LINE_APART - 1;
            sheet.shapes.addAll(fit.sign(x + SIGN / 2, baseline - Elevation.TEXT * Elevation.TO_BASELINE));
            sheet.shapes.add(
                    Label.from(x + SIGN + 1, baseline, words.say("drawing.orientation." + fit.id()), Style.STRONG));
            sheet.shapes.add(new GapDimension(situation, orientation, sheet).dimension(column, height - NOTE, words));
        }
    }
}
