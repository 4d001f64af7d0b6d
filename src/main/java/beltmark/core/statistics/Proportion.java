package beltmark.core.statistics;

import java.util.Optional;

/**
 * How many of how many.
 *
 * @param hits those that count, 0..trials
 * @param trials all of them, 0 or more
 */
public record Proportion(long hits, long trials) {

    /**
     * The smallest group whose share is shown with an interval; of fewer people only the bare count is shown (NCES
     * 2011-603 finds minimums of 5 to 30 in use, most often 10).
     */
    public static final int SMALLEST_GROUP = 10;

    /** The standard normal deviate that leaves 2.5 % above it. */
    private static final double Z = 1.959963984540054;

    /** Refuses negative counts and more hits than trials. */
    public Proportion {
        if (hits < 0 || hits > trials) {
            throw new IllegalArgumentException(hits + " of " + trials + " is not a proportion");
        }
    }

    /** {@return the share, 0..1; nothing of no trials, where a share cannot be computed} */
    public Optional<Double> share() {
        return trials == 0 ? Optional.empty() : Optional.of((double) hits / trials);
    }

    /** {@return whether the group is large enough for an interval to be shown} */
    public boolean isLargeEnough() {
        return trials >= SMALLEST_GROUP;
    }

    /**
     * The 95 % interval of Wilson: (p + z²/2n ∓ z √(p(1−p)/n + z²/4n²)) / (1 + z²/n), with p the share, n the trials and
     * z = 1.96 (E. B. Wilson 1927, J. Am. Stat. Assoc. 22, 209-212; recommended for small n by Brown, Cai and DasGupta
     * 2001). It stays within 0..1 and does not close up at 0 or n hits, which is why it is used here.
     *
     * @return the interval; nothing of no trials
     */
    public Optional<Interval> wilson95() {
        if (trials == 0) {
            return Optional.empty();
        }
        double n = trials;
        double p = hits / n;
        double spread = 1 + Z * Z / n;
        double centre = (p + Z * Z / (2 * n)) / spread;
        double half = Z * Math.sqrt(p * (1 - p) / n + Z * Z / (4 * n * n)) / spread;
        double low = hits == 0 ? 0 : Math.max(0, centre - half);
        double high = hits == trials ? 1 : Math.min(1, centre + half);
        return Optional.of(new Interval(low, high));
    }
}
