package beltmark.core.units;

/**
 * A volume.
 *
 * @param litres finite
 */
public record Volume(double litres) implements Quantity {

    private static final double PER_CUBIC_FOOT = 0.304_8 * 0.304_8 * 0.304_8 * 1000;

    public Volume {
        Limits.finite("volume", litres);
    }

    /** {@return a volume in litres} */
    public static Volume ofLitres(double litres) {
        return new Volume(litres);
    }

    /** {@return a volume in cubic feet} */
    public static Volume ofCubicFeet(double cubicFeet) {
        return new Volume(cubicFeet * PER_CUBIC_FOOT);
    }

    /** {@return this volume in cubic feet} */
    public double cubicFeet() {
        return litres / PER_CUBIC_FOOT;
    }

    @Override
    public double amount() {
        return litres;
    }

    @Override
    public String unit() {
        return "L";
    }
}
