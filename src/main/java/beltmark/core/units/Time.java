package beltmark.core.units;

/**
 * A length of time.
 *
 * @param seconds finite
 */
public record Time(double seconds) implements Quantity {

    private static final double PER_HOUR = 3600;

    public Time {
        Limits.finite("time", seconds);
    }

    /** {@return a time in seconds} */
    public static Time ofSeconds(double seconds) {
        return new Time(seconds);
    }

    /** {@return a time in hours} */
    public static Time ofHours(double hours) {
        return new Time(hours * PER_HOUR);
    }

    /** {@return this time in hours} */
    public double hours() {
        return seconds / PER_HOUR;
    }

    @Override
    public double amount() {
        return seconds;
    }

    @Override
    public String unit() {
        return "s";
    }
}
