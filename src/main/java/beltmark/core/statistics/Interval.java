package beltmark.core.statistics;

/**
 * The lowest and the highest share that go with what was counted.
 *
 * @param low the lower end, 0..1
 * @param high the upper end, low..1
 */
public record Interval(double low, double high) {

    /** Refuses ends outside 0..1 and ends the wrong way round. */
    public Interval {
        if (!(low >= 0 && low <= high && high <= 1)) {
            throw new IllegalArgumentException("interval " + low + ".." + high + " is not within 0..1");
        }
    }
}
