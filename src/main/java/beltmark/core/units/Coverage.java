package beltmark.core.units;

/**
 * How much material lies on a belt, per area.
 *
 * @param gramsPerSquareMetre finite
 */
public record Coverage(double gramsPerSquareMetre) implements Quantity {

    private static final double PER_POUND_PER_SQUARE_FOOT = Mass.KILOGRAMS_PER_POUND * 1000 / (0.304_8 * 0.304_8);

    public Coverage {
        Limits.finite("coverage", gramsPerSquareMetre);
    }

    /** {@return a coverage in grams per square metre} */
    public static Coverage ofGramsPerSquareMetre(double grams) {
        return new Coverage(grams);
    }

    /** {@return a coverage in pounds per square foot} */
    public static Coverage ofPoundsPerSquareFoot(double pounds) {
        return new Coverage(pounds * PER_POUND_PER_SQUARE_FOOT);
    }

    /** {@return this coverage in pounds per square foot} */
    public double poundsPerSquareFoot() {
        return gramsPerSquareMetre / PER_POUND_PER_SQUARE_FOOT;
    }

    @Override
    public double amount() {
        return gramsPerSquareMetre;
    }

    @Override
    public String unit() {
        return "g/m²";
    }
}
