package beltmark.core.units;

/** A value that a step of a worked solution can show: an amount and the unit it is told in. */
public interface Quantity {

    /** {@return the amount in the unit that {@link #unit()} names} */
    double amount();

    /** {@return the symbol of the unit, as in SI, or the empty text for a bare number} */
    String unit();
}
