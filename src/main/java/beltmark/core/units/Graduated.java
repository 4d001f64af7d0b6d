package beltmark.core.units;

/**
 * A length as one certain tape prints it, whichever tape the reader is used to: a tape in millimetres reads millimetres for
 * everybody, and fractions are practised in fractions.
 *
 * @param length any length
 * @param graduation the divisions of that tape
 */
public record Graduated(Length length, Graduation graduation) implements Quantity {

    @Override
    public double amount() {
        return length.amount();
    }

    @Override
    public String unit() {
        return length.unit();
    }
}
