package beltmark.drawing.setup;

import beltmark.core.setup.Orientation;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Situation;
import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Heights;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * A tensioner with pole, blade and tip. Its datum edge, its reach and the tip under the belt are to scale; what is inside
 * the reach is a sketch of the principle, drawn from no particular hardware.
 */
final class TensionerSketch {

    /** The pole lies this part of the overslung reach below the belt. */
    private static final double POLE_AT = 0.6;

    private static final double POLE_HALF_MILLIMETRES = 22;
    private static final double CLAMP_OVER_POLE = 1.6;
    private static final double PLATE = 2.4;
    private static final double PLATE_END = 7.4;
    private static final double BAR = 2.8;
    private static final double WASHER = 0.9;
    private static final double PLATE_AT = 0.46;
    private static final double BAR_HALF = 6.6;
    private static final double ROD_AT = 5.2;
    private static final double ROD_HALF = 0.7;
    private static final double NUT_HALF = 1.5;
    private static final double NUT = 1.6;
    private static final double SPRING_HALF = 3;
    private static final int SPRING_TURNS = 6;
    private static final double TIP = 2.4;

    private final Column column;
    private final Heights heights;
    private final double top;
    private final double bottom;
    private final double datum;
    private final double pole;
    private final double poleHalf;
    private final List<Shape> shapes = new ArrayList<>();

    private TensionerSketch(Column column, Heights heights, Situation situation, Orientation orientation) {
        Reach reach = situation.card().reachFromBeltMark(situation.tip(), orientation);
        this.column = column;
        this.heights = heights;
        this.top = heights.y(reach.high());
        this.bottom = heights.y(reach.low());
        this.datum = heights.y(situation.card().mountOffset(situation.tip(), orientation));
        this.poleHalf = POLE_HALF_MILLIMETRES / heights.scale();
        this.pole = heights.y(pole(situation));
    }

    /** {@return the shapes, the hindmost first} */
    static List<Shape> of(Column column, Heights heights, Situation situation, Orientation orientation) {
        TensionerSketch sketch = new TensionerSketch(column, heights, situation, orientation);
        sketch.addBlade();
        if (orientation == Orientation.OVERSLUNG) {
            sketch.addOverslung();
        } else {
            sketch.addUnderslung();
        }
        return sketch.shapes;
    }

    /** {@return the middle of the pole, from the belt mark} */
    static Length pole(Situation situation) {
        Reach overslung = situation.card().reachFromBeltMark(situation.tip(), Orientation.OVERSLUNG);
        return overslung.low().times(POLE_AT);
    }

    private void addBlade() {
        double belt = heights.y(Length.ZERO);
        double bladeFrom = column.x(Column.BLADE_FROM);
        double bladeTo = column.x(column.width());
        shapes.add(Outline.brokenBar(bladeFrom, bladeTo, belt + TIP / 2, pole, Style.PART));
        shapes.add(Outline.brokenBar(bladeFrom, bladeTo, belt, belt + TIP, Style.TIP));
        shapes.add(Outline.brokenBar(
                column.x(Column.TENSIONER_MIDDLE), bladeTo, pole - poleHalf, pole + poleHalf, Style.PART));
    }

    /** The plate is fixed low, the spring stands on it and lifts a bar, and two rods hang the pole from the bar. */
    private void addOverslung() {
        double plate = top + PLATE_AT * (bottom - top);
        addRods(top + BAR, bottom);
        addPlate(plate);
        addSpring(top + BAR, plate);
        addBar(top);
        addClamp();
        addNuts(bottom - NUT, bottom);
    }

    /** The base is fixed high, two rods hang a bar from it, and the spring stands on the bar and pushes the pole up. */
    private void addUnderslung() {
        addRods(datum, bottom - BAR);
        addNuts(top, datum);
        addPlate(datum);
        addSpring(pole + poleHalf + CLAMP_OVER_POLE, bottom - BAR);
        addBar(bottom - BAR);
        addClamp();
    }

    private void addRods(double from, double to) {
        for (int side : new int[] {-1, 1}) {
            shapes.add(across(side * ROD_AT - ROD_HALF, from, side * ROD_AT + ROD_HALF, to));
        }
    }

    private void addNuts(double from, double to) {
        for (int side : new int[] {-1, 1}) {
            shapes.add(across(side * ROD_AT - NUT_HALF, from, side * ROD_AT + NUT_HALF, to));
        }
    }

    private void addPlate(double upperEdge) {
        double toPost = Column.POST_FROM - Column.TENSIONER_MIDDLE;
        shapes.add(across(-PLATE_END, upperEdge, toPost, upperEdge + PLATE));
    }

    private void addBar(double upperEdge) {
        shapes.add(across(-BAR_HALF, upperEdge, BAR_HALF, upperEdge + BAR));
    }

    private void addClamp() {
        double half = poleHalf + CLAMP_OVER_POLE;
        shapes.add(across(-BAR_HALF, pole - half, BAR_HALF, pole + half));
    }

    /** A zigzag between two seats, with the washer on its upper end. */
    private void addSpring(double upper, double lower) {
        double from = upper + WASHER;
        List<Point> wire = new ArrayList<>();
        for (int i = 0; i <= 2 * SPRING_TURNS; i++) {
            double across = i % 2 == 0 ? -SPRING_HALF : SPRING_HALF;
            double y = from + (lower - from) * i / (2 * SPRING_TURNS);
            wire.add(new Point(column.x(Column.TENSIONER_MIDDLE + across), y));
        }
        shapes.add(new Outline(wire, false, Style.SPRING));
        shapes.add(across(-SPRING_HALF - 1, upper, SPRING_HALF + 1, from));
    }

    private Box across(double from, double y1, double to, double y2) {
        return Box.between(
                column.x(Column.TENSIONER_MIDDLE + from), y1, column.x(Column.TENSIONER_MIDDLE + to), y2, Style.PART);
    }
}
