package beltmark.core.units;

/**
 * A frequency, or a speed of rotation.
 *
 * @param hertz finite
 */
public record Frequency(double hertz) implements Quantity {

    public Frequency {
        Limits.finite("frequency", hertz);
    }

    /** {@return a frequency in hertz} */
    public static Frequency ofHertz(double hertz) {
        return new Frequency(hertz);
    }

    /** {@return a speed of rotation in revolutions per minute} */
    public static Frequency ofRevolutionsPerMinute(double revolutions) {
        return new Frequency(revolutions / 60);
    }

    /** {@return this speed of rotation in revolutions per minute} */
    public double revolutionsPerMinute() {
        return hertz * 60;
    }

    /** {@return the angular frequency} */
    public double radiansPerSecond() {
        return 2 * Math.PI * hertz;
    }

    @Override
    public double amount() {
        return hertz;
    }

    @Override
    public String unit() {
        return "Hz";
    }
}
