package beltmark.core.units;

/**
 * An angle, in degrees as it is read off an inclinometer.
 *
 * @param degrees finite
 */
public record Angle(double degrees) implements Quantity {

    /** No angle. */
    public static final Angle ZERO = new Angle(0);

    public Angle {
        Limits.finite("angle", degrees);
    }

    /** {@return an angle in degrees} */
    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees);
    }

    /** {@return an angle in radians} */
    public static Angle ofRadians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    /** {@return this angle in radians} */
    public double radians() {
        return Math.toRadians(degrees);
    }

    /** {@return the sine} */
    public double sin() {
        return Math.sin(radians());
    }

    /** {@return the cosine} */
    public double cos() {
        return Math.cos(radians());
    }

    /** {@return the tangent} */
    public double tan() {
        return Math.tan(radians());
    }

    @Override
    public double amount() {
        return degrees;
    }

    @Override
    public String unit() {
        return "°";
    }
}
