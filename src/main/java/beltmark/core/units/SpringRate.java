package beltmark.core.units;

/**
 * The rate of a spring: the force it takes to change its length by one unit.
 *
 * @param newtonsPerMillimetre finite
 */
public record SpringRate(double newtonsPerMillimetre) implements Quantity {

    private static final double PER_POUND_PER_INCH = Force.NEWTONS_PER_POUND / 25.4;

    public SpringRate {
        Limits.finite("rate", newtonsPerMillimetre);
    }

    /** {@return a rate in newtons per millimetre} */
    public static SpringRate ofNewtonsPerMillimetre(double newtonsPerMillimetre) {
        return new SpringRate(newtonsPerMillimetre);
    }

    /** {@return a rate in pounds-force per inch} */
    public static SpringRate ofPoundsForcePerInch(double pounds) {
        return new SpringRate(pounds * PER_POUND_PER_INCH);
    }

    /** {@return this rate in pounds-force per inch} */
    public double poundsForcePerInch() {
        return newtonsPerMillimetre / PER_POUND_PER_INCH;
    }

    /** {@return the force that a change of length takes} */
    public Force force(Length change) {
        return new Force(newtonsPerMillimetre * change.millimetres());
    }

    /** {@return the change of length under a force; refused when the rate is nought} */
    public Length change(Force force) {
        return Length.ofMillimetres(force.newtons() / newtonsPerMillimetre);
    }

    @Override
    public double amount() {
        return newtonsPerMillimetre;
    }

    @Override
    public String unit() {
        return "N/mm";
    }
}
