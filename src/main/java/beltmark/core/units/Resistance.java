package beltmark.core.units;

/**
 * An electric resistance.
 *
 * @param ohms finite
 */
public record Resistance(double ohms) implements Quantity {

    public Resistance {
        Limits.finite("resistance", ohms);
    }

    /** {@return a resistance in ohms} */
    public static Resistance ofOhms(double ohms) {
        return new Resistance(ohms);
    }

    /** {@return a resistance in kilohms} */
    public static Resistance ofKilohms(double kilohms) {
        return new Resistance(kilohms * 1000);
    }

    @Override
    public double amount() {
        return ohms;
    }

    @Override
    public String unit() {
        return "Ω";
    }
}
