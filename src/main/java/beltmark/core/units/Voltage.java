package beltmark.core.units;

/**
 * An electric voltage.
 *
 * @param volts finite
 */
public record Voltage(double volts) implements Quantity {

    public Voltage {
        Limits.finite("voltage", volts);
    }

    /** {@return a voltage in volts} */
    public static Voltage ofVolts(double volts) {
        return new Voltage(volts);
    }

    @Override
    public double amount() {
        return volts;
    }

    @Override
    public String unit() {
        return "V";
    }
}
