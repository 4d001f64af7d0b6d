package beltmark.core.units;

/**
 * A pressure or a stress, in megapascals, that is in newtons per square millimetre.
 *
 * @param megapascals finite
 */
public record Pressure(double megapascals) implements Quantity {

    private static final double PER_PSI = Force.NEWTONS_PER_POUND / (25.4 * 25.4);

    public Pressure {
        Limits.finite("pressure", megapascals);
    }

    /** {@return a pressure in megapascals} */
    public static Pressure ofMegapascals(double megapascals) {
        return new Pressure(megapascals);
    }

    /** {@return a pressure in kilopascals} */
    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(kilopascals / 1000);
    }

    /** {@return a pressure in pounds-force per square inch} */
    public static Pressure ofPoundsForcePerSquareInch(double psi) {
        return new Pressure(psi * PER_PSI);
    }

    /** {@return this pressure in kilopascals} */
    public double kilopascals() {
        return megapascals * 1000;
    }

    /** {@return this pressure in pounds-force per square inch} */
    public double poundsForcePerSquareInch() {
        return megapascals / PER_PSI;
    }

    @Override
    public double amount() {
        return megapascals;
    }

    @Override
    public String unit() {
        return "MPa";
    }
}
