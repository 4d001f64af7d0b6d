package beltmark.core.units;

/**
 * A power.
 *
 * @param watts finite
 */
public record Power(double watts) implements Quantity {

    private static final double PER_HORSEPOWER = 550 * Force.NEWTONS_PER_POUND * 0.304_8;

    public Power {
        Limits.finite("power", watts);
    }

    /** {@return a power in watts} */
    public static Power ofWatts(double watts) {
        return new Power(watts);
    }

    /** {@return a power in mechanical horsepower of 550 ft lbf/s} */
    public static Power ofHorsepower(double horsepower) {
        return new Power(horsepower * PER_HORSEPOWER);
    }

    /** {@return this power in mechanical horsepower} */
    public double horsepower() {
        return watts / PER_HORSEPOWER;
    }

    @Override
    public double amount() {
        return watts;
    }

    @Override
    public String unit() {
        return "W";
    }
}
