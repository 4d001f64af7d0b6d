package beltmark.core.units;

/**
 * A mass.
 *
 * @param kilograms finite
 */
public record Mass(double kilograms) implements Quantity {

    /** The avoirdupois pound in kilograms, exactly (NIST SP 811 appendix B, factor from memory). */
    public static final double KILOGRAMS_PER_POUND = 0.453_592_37;

    /** Standard gravity in m/s2, exactly (NIST SP 811 appendix B, value from memory). */
    public static final double STANDARD_GRAVITY = 9.806_65;

    public Mass {
        Limits.finite("mass", kilograms);
    }

    /** {@return a mass in kilograms} */
    public static Mass ofKilograms(double kilograms) {
        return new Mass(kilograms);
    }

    /** {@return a mass in pounds} */
    public static Mass ofPounds(double pounds) {
        return new Mass(pounds * KILOGRAMS_PER_POUND);
    }

    /** {@return this mass in pounds} */
    public double pounds() {
        return kilograms / KILOGRAMS_PER_POUND;
    }

    /** {@return the weight of this mass under standard gravity, 9.80665 m/s2} */
    public Force weight() {
        return new Force(kilograms * STANDARD_GRAVITY);
    }

    @Override
    public double amount() {
        return kilograms;
    }

    @Override
    public String unit() {
        return "kg";
    }
}
