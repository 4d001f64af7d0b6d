package beltmark.core.units;

/**
 * A mass per time.
 *
 * @param kilogramsPerHour finite
 */
public record MassFlow(double kilogramsPerHour) implements Quantity {

    public MassFlow {
        Limits.finite("flow", kilogramsPerHour);
    }

    /** {@return a flow in kilograms per hour} */
    public static MassFlow ofKilogramsPerHour(double kilogramsPerHour) {
        return new MassFlow(kilogramsPerHour);
    }

    /** {@return a flow in pounds per hour} */
    public static MassFlow ofPoundsPerHour(double pounds) {
        return new MassFlow(pounds * Mass.KILOGRAMS_PER_POUND);
    }

    /** {@return this flow in pounds per hour} */
    public double poundsPerHour() {
        return kilogramsPerHour / Mass.KILOGRAMS_PER_POUND;
    }

    @Override
    public double amount() {
        return kilogramsPerHour;
    }

    @Override
    public String unit() {
        return "kg/h";
    }
}
