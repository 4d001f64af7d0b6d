package beltmark.core.problem;

/**
 * How far off a number may be and still count as that number: a share of it, and never less than a floor. The floor
 * belongs to the quantity and its unit; one made for newtons would take 0.20 for 0.25 N/mm.
 *
 * @param share 0 or more, of the size of the number
 * @param floor 0 or more, in the unit of the number
 */
public record Tolerance(double share, double floor) {

    /** Rounded inputs and three figures: the tolerance of computed loads and energies. */
    public static final Tolerance ONE_PERCENT = new Tolerance(0.01, 0);

    /** Room for the last binary digit: a number typed to the very edge still counts. */
    private static final double SLACK = 1e-9;

    public Tolerance {
        if (!(share >= 0) || !(floor >= 0)) {
            throw new IllegalArgumentException("tolerance " + share + ", at least " + floor);
        }
    }

    /** {@return a tolerance that does not grow with the number} */
    public static Tolerance of(double floor) {
        return new Tolerance(0, floor);
    }

    /** {@return how far off an answer to that number may be} */
    public double around(double number) {
        return Math.max(share * Math.abs(number), floor);
    }

    /** {@return whether an answer counts as that number} */
    public boolean holds(double answer, double number) {
        double room = around(number);
        return Math.abs(answer - number) <= room + SLACK * Math.max(1, Math.abs(number));
    }

    /** {@return whether an answer could count as both numbers} */
    boolean overlap(double a, double b) {
        return Math.abs(a - b) <= around(a) + around(b);
    }
}
