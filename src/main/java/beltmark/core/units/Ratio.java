package beltmark.core.units;

/**
 * A bare number: a ratio, a factor, a count that need not be whole.
 *
 * @param value finite
 */
public record Ratio(double value) implements Quantity {

    public Ratio {
        Limits.finite("number", value);
    }

    /** {@return a bare number} */
    public static Ratio of(double value) {
        return new Ratio(value);
    }

    @Override
    public double amount() {
        return value;
    }

    @Override
    public String unit() {
        return "";
    }
}
