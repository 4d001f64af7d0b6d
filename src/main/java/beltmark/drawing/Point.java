package beltmark.drawing;

/**
 * A place on a sheet, to a thousandth, which is finer than any screen or printer shows.
 *
 * @param x millimetres of paper from the left edge
 * @param y millimetres of paper from the top edge, downwards
 */
public record Point(double x, double y) {

    private static final double PER_MILLIMETRE = 1_000;

    public Point {
        x = rounded(x);
        y = rounded(y);
    }

    static double rounded(double millimetres) {
        return Math.round(millimetres * PER_MILLIMETRE) / PER_MILLIMETRE;
    }
}
