package beltmark.drawing.spring;

import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Hatch;
import beltmark.drawing.Heights;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * A spring between the washer under its nut and the top of its base, heights to scale, widths not.
 *
 * @param middle of the rod, in millimetres of paper
 * @param heights with the top of the base at 0
 * @param measured from the top of the washer to the top of the base
 * @param washer its thickness
 */
record SpringColumn(double middle, Heights heights, Length measured, Length washer) {

    static final double HALF = 13;
    static final double BASE = 6;
    static final double NUT = 6;
    private static final double ROD_HALF = 1.6;
    private static final double ROD_OVER = 5;
    private static final double NUT_HALF = 5;
    private static final double SPRING_HALF = 9;
    private static final int TURNS = 6;

    List<Shape> shapes() {
        double base = heights.y(Length.ZERO);
        double top = heights.y(measured);
        double coil = heights.y(measured.minus(washer));
        List<Shape> shapes = new ArrayList<>();
        shapes.add(across(ROD_HALF, top - NUT - ROD_OVER, base, Style.PART));
        List<Point> wire = new ArrayList<>();
        for (int i = 0; i <= 2 * TURNS; i++) {
            double x = middle + (i % 2 == 0 ? -SPRING_HALF : SPRING_HALF);
            wire.add(new Point(x, coil + (base - coil) * i / (2 * TURNS)));
        }
        shapes.add(new Outline(wire, false, Style.SPRING));
        shapes.add(across(HALF, top, coil, Style.PART));
        shapes.add(across(NUT_HALF, top - NUT, top, Style.PART));
        Box plate = Box.between(middle - HALF - 3, base, middle + HALF + 3, base + BASE, Style.SECTION);
        shapes.add(plate);
        shapes.add(Hatch.rising(plate, 2));
        return shapes;
    }

    private Box across(double half, double from, double to, Style style) {
        return Box.between(middle - half, from, middle + half, to, style);
    }
}
