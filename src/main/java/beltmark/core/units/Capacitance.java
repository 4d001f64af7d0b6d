package beltmark.core.units;

/**
 * An electric capacitance.
 *
 * @param farads finite
 */
public record Capacitance(double farads) implements Quantity {

    public Capacitance {
        Limits.finite("capacitance", farads);
    }

    /** {@return a capacitance in farads} */
    public static Capacitance ofFarads(double farads) {
        return new Capacitance(farads);
    }

    /** {@return a capacitance in millifarads} */
    public static Capacitance ofMillifarads(double millifarads) {
        return new Capacitance(millifarads / 1000);
    }

    /** {@return a capacitance in microfarads} */
    public static Capacitance ofMicrofarads(double microfarads) {
        return new Capacitance(microfarads / 1e6);
    }

    /** {@return this capacitance in microfarads} */
    public double microfarads() {
        return farads * 1e6;
    }

    @Override
    public double amount() {
        return farads;
    }

    @Override
    public String unit() {
        return "F";
    }
}
