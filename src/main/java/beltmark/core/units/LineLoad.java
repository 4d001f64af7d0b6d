package beltmark.core.units;

/**
 * A force per length, as a blade presses on a belt, or a belt pulls across its width.
 *
 * @param newtonsPerMillimetre finite
 */
public record LineLoad(double newtonsPerMillimetre) implements Quantity {

    private static final double PER_POUND_PER_INCH = Force.NEWTONS_PER_POUND / 25.4;

    public LineLoad {
        Limits.finite("line load", newtonsPerMillimetre);
    }

    /** {@return a line load in newtons per millimetre} */
    public static LineLoad ofNewtonsPerMillimetre(double newtonsPerMillimetre) {
        return new LineLoad(newtonsPerMillimetre);
    }

    /** {@return a line load in pounds-force per inch} */
    public static LineLoad ofPoundsForcePerInch(double pounds) {
        return new LineLoad(pounds * PER_POUND_PER_INCH);
    }

    /** {@return a force spread evenly over a length above 0} */
    public static LineLoad of(Force force, Length length) {
        return new LineLoad(force.newtons() / length.millimetres());
    }

    /** {@return this line load over a length} */
    public Force over(Length length) {
        return new Force(newtonsPerMillimetre * length.millimetres());
    }

    /** {@return this line load in pounds-force per inch} */
    public double poundsForcePerInch() {
        return newtonsPerMillimetre / PER_POUND_PER_INCH;
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
