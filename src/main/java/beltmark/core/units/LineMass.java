package beltmark.core.units;

/**
 * A mass per length, as material lies on a loaded belt.
 *
 * @param kilogramsPerMetre finite
 */
public record LineMass(double kilogramsPerMetre) implements Quantity {

    private static final double PER_POUND_PER_FOOT = Mass.KILOGRAMS_PER_POUND / 0.304_8;

    public LineMass {
        Limits.finite("line mass", kilogramsPerMetre);
    }

    /** {@return a line mass in kilograms per metre} */
    public static LineMass ofKilogramsPerMetre(double kilogramsPerMetre) {
        return new LineMass(kilogramsPerMetre);
    }

    /** {@return a line mass in pounds per foot} */
    public static LineMass ofPoundsPerFoot(double pounds) {
        return new LineMass(pounds * PER_POUND_PER_FOOT);
    }

    /** {@return this line mass in pounds per foot} */
    public double poundsPerFoot() {
        return kilogramsPerMetre / PER_POUND_PER_FOOT;
    }

    @Override
    public double amount() {
        return kilogramsPerMetre;
    }

    @Override
    public String unit() {
        return "kg/m";
    }
}
