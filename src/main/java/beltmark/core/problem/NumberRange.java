package beltmark.core.problem;

/**
 * The numbers that may be drawn: from the first in equal steps up to the last.
 *
 * @param from the first
 * @param to the last; not below the first
 * @param step the distance between two, above 0
 */
public record NumberRange(double from, double to, double step) {

    private static final double SLACK = 1e-9;

    public NumberRange {
        if (!(step > 0) || !(to >= from)) {
            throw new IllegalArgumentException("no range from " + from + " to " + to + " in steps of " + step);
        }
    }

    /** {@return how many numbers there are} */
    public int steps() {
        return (int) Math.floor((to - from) / step + SLACK) + 1;
    }

    /** {@return the number at an index, 0 being the first; free of the binary crumbs of repeated adding} */
    public double at(int index) {
        double perStep = Math.rint(1 / step);
        boolean wholePerUnit = Math.abs(perStep * step - 1) < SLACK && perStep >= 1;
        return wholePerUnit ? Math.rint(from * perStep + index) / perStep : from + index * step;
    }
}
