package beltmark.core.statistics;

/**
 * The ends of an interval of a statistic that is no share: a correlation or a reliability, which may be negative.
 *
 * @param low the lower end
 * @param high the upper end, low or more
 */
public record Bounds(double low, double high) {

    /** The standard normal deviate that leaves 2.5 % above it. */
    private static final double Z = 1.959963984540054;

    /** Refuses ends that are no numbers and ends the wrong way round. */
    public Bounds {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new IllegalArgumentException("bounds " + low + ".." + high + " are not in order");
        }
    }

    /**
     * The 95 % interval of a correlation by Fisher's z: tanh(artanh r ∓ 1.96/√(n−3)) (R. A. Fisher 1921, Metron 1; from
     * memory). It supposes two normal variables, so for an item answered right or wrong it is a rough guide.
     *
     * @param correlation r, -1..1
     * @param people n, 4 or more
     * @return the interval within -1..1; no wider than a point at r = ±1
     */
    public static Bounds ofCorrelation(double correlation, long people) {
        if (people < 4 || !(Math.abs(correlation) <= 1)) {
            throw new IllegalArgumentException("r = " + correlation + " of " + people + " people has no interval");
        }
        double z = Math.log1p(correlation) - Math.log1p(-correlation);
        double half = Z / Math.sqrt(people - 3.0);
        return new Bounds(Math.tanh(z / 2 - half), Math.tanh(z / 2 + half));
    }
}
