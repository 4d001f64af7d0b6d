package beltmark.core.units;

/**
 * A computed length that is not rounded to whole nanometres: leads, errors and gaps far below a graduation of any tape.
 *
 * @param millimetres finite
 */
public record PreciseLength(double millimetres) implements Quantity {

    public PreciseLength {
        Limits.finite("length", millimetres);
    }

    /** {@return a length in millimetres} */
    public static PreciseLength ofMillimetres(double millimetres) {
        return new PreciseLength(millimetres);
    }

    /** {@return this length to the nearest nanometre} */
    public Length toLength() {
        return Length.ofMillimetres(millimetres);
    }

    /** {@return this length in inches} */
    public double inches() {
        return millimetres / 25.4;
    }

    @Override
    public double amount() {
        return millimetres;
    }

    @Override
    public String unit() {
        return "mm";
    }
}
