package beltmark.core.units;

/**
 * A speed.
 *
 * @param metresPerSecond finite
 */
public record Speed(double metresPerSecond) implements Quantity {

    private static final double PER_FOOT_PER_MINUTE = 0.304_8 / 60;

    public Speed {
        Limits.finite("speed", metresPerSecond);
    }

    /** {@return a speed in metres per second} */
    public static Speed ofMetresPerSecond(double metresPerSecond) {
        return new Speed(metresPerSecond);
    }

    /** {@return a speed in feet per minute} */
    public static Speed ofFeetPerMinute(double feetPerMinute) {
        return new Speed(feetPerMinute * PER_FOOT_PER_MINUTE);
    }

    /** {@return this speed in feet per minute} */
    public double feetPerMinute() {
        return metresPerSecond / PER_FOOT_PER_MINUTE;
    }

    @Override
    public double amount() {
        return metresPerSecond;
    }

    @Override
    public String unit() {
        return "m/s";
    }
}
