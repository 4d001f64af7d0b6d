package beltmark.core.units;

/**
 * An energy.
 *
 * @param joules finite
 */
public record Energy(double joules) implements Quantity {

    private static final double PER_FOOT_POUND = Force.NEWTONS_PER_POUND * 0.304_8;

    public Energy {
        Limits.finite("energy", joules);
    }

    /** {@return an energy in joules} */
    public static Energy ofJoules(double joules) {
        return new Energy(joules);
    }

    /** {@return an energy in foot-pounds-force} */
    public static Energy ofFootPounds(double footPounds) {
        return new Energy(footPounds * PER_FOOT_POUND);
    }

    /** {@return this energy in foot-pounds-force} */
    public double footPounds() {
        return joules / PER_FOOT_POUND;
    }

    @Override
    public double amount() {
        return joules;
    }

    @Override
    public String unit() {
        return "J";
    }
}
