package beltmark.core.units;

/**
 * A force, signed.
 *
 * @param newtons finite
 */
public record Force(double newtons) implements Quantity, Comparable<Force> {

    /** One pound-force: 0.45359237 kg x 9.80665 m/s2 (exact; NIST SP 811 appendix B, factors from memory). */
    public static final double NEWTONS_PER_POUND = 4.448_221_615_260_5;

    /** No force. */
    public static final Force ZERO = new Force(0);

    public Force {
        Limits.finite("force", newtons);
    }

    /** {@return a force in newtons} */
    public static Force ofNewtons(double newtons) {
        return new Force(newtons);
    }

    /** {@return a force in pounds-force} */
    public static Force ofPoundsForce(double pounds) {
        return new Force(pounds * NEWTONS_PER_POUND);
    }

    /** {@return this force in pounds-force} */
    public double poundsForce() {
        return newtons / NEWTONS_PER_POUND;
    }

    /** {@return the sum of both} */
    public Force plus(Force other) {
        return new Force(newtons + other.newtons);
    }

    /** {@return this less the other} */
    public Force minus(Force other) {
        return new Force(newtons - other.newtons);
    }

    /** {@return this many times over} */
    public Force times(double factor) {
        return new Force(newtons * factor);
    }

    @Override
    public double amount() {
        return newtons;
    }

    @Override
    public String unit() {
        return "N";
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
