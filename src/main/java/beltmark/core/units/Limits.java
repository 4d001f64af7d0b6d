package beltmark.core.units;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;

/** Checks that numbers are numbers and within what they can be; refuses them by name otherwise. */
public final class Limits {

    /** No quantity in this program comes near it: beyond it a number is a slip of the keyboard. */
    public static final double LARGEST = 1e12;

    /** The largest length: one kilometre is more than any structure, and sums of such lengths stay exact. */
    public static final double LARGEST_MILLIMETRES = 1e6;

    private Limits() {}

    /**
     * Checks a bare number.
     *
     * @return the number
     * @throws Refused NOT_A_NUMBER for NaN and infinities, OUT_OF_RANGE beyond {@link #LARGEST} either way
     */
    public static double finite(String what, double number) {
        return within(what, number, "", -LARGEST, LARGEST);
    }

    /** {@return the number, above 0} */
    public static double positive(String what, double number) {
        if (number == 0) {
            throw outOfRange(what, number, "", 0, LARGEST);
        }
        return within(what, number, "", 0, LARGEST);
    }

    /** {@return the number, 0 or more} */
    public static double notNegative(String what, double number) {
        return within(what, number, "", 0, LARGEST);
    }

    /** {@return the number, from {@code low} to {@code high}, both allowed} */
    public static double within(String what, double number, double low, double high) {
        return within(what, number, "", low, high);
    }

    /** {@return the quantity, above 0} */
    public static <Q extends Quantity> Q positive(String what, Q quantity) {
        if (quantity.amount() == 0) {
            throw outOfRange(what, 0, quantity.unit(), 0, largest(quantity));
        }
        within(what, quantity.amount(), quantity.unit(), 0, largest(quantity));
        return quantity;
    }

    /** {@return the quantity, 0 or more} */
    public static <Q extends Quantity> Q notNegative(String what, Q quantity) {
        within(what, quantity.amount(), quantity.unit(), 0, largest(quantity));
        return quantity;
    }

    /** {@return the quantity, of either sign} */
    public static <Q extends Quantity> Q signed(String what, Q quantity) {
        within(what, quantity.amount(), quantity.unit(), -largest(quantity), largest(quantity));
        return quantity;
    }

    /** {@return the quantity, its amount from {@code low} to {@code high}, both allowed} */
    public static <Q extends Quantity> Q within(String what, Q quantity, double low, double high) {
        within(what, quantity.amount(), quantity.unit(), low, high);
        return quantity;
    }

    private static double largest(Quantity quantity) {
        return quantity instanceof Length ? LARGEST_MILLIMETRES : LARGEST;
    }

    private static double within(String what, double number, String unit, double low, double high) {
        if (!Double.isFinite(number)) {
            throw Refused.because(Refusal.NOT_A_NUMBER).with("what", what);
        }
        if (number < low || number > high) {
            throw outOfRange(what, number, unit, low, high);
        }
        return number;
    }

    private static Refused outOfRange(String what, double number, String unit, double low, double high) {
        return Refused.because(Refusal.OUT_OF_RANGE)
                .with("what", what)
                .with("value", number)
                .with("low", low)
                .with("high", high)
                .with("unit", unit);
    }
}
