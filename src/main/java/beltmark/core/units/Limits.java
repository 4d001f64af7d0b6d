package beltmark.core.units;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;

/** Checks that numbers are numbers and within what they can be; refuses them by name otherwise. */
public final class Limits {

    /** No quantity in this program comes near it: beyond it a number is a slip of the keyboard. */
    public static final double LARGEST = 1e12;

    /** The largest length, 100 km: no belt is longer, and sums of such lengths stay exact. */
    public static final double LARGEST_MILLIMETRES = 1e8;

    /** Slack for comparing with thresholds: 1150/1000 - 1 is just below 0.15 in binary. */
    private static final double SLACK = 1e-9;

    private Limits() {}

    /** {@return whether a number is below a threshold by more than rounding} */
    public static boolean isBelow(double number, double threshold) {
        return number < threshold - SLACK * Math.max(1, Math.abs(threshold));
    }

    /** {@return whether a number is above a threshold by more than rounding} */
    public static boolean isAbove(double number, double threshold) {
        return number > threshold + SLACK * Math.max(1, Math.abs(threshold));
    }

    /** {@return whether a number is outside a range by more than rounding} */
    public static boolean isOutside(double number, double low, double high) {
        return isBelow(number, low) || isAbove(number, high);
    }

    /**
     * Checks a bare number.
     *
     * @return the number
     * @throws Refused NOT_A_NUMBER for NaN, OUT_OF_RANGE beyond {@link #LARGEST} either way
     */
    public static double finite(String what, double number) {
        return within(what, number, "", -LARGEST, LARGEST);
    }

    /** {@return the number, above 0} */
    public static double positive(String what, double number) {
        if (number <= 0) {
            throw notAboveZero(what, number, "");
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
        if (quantity.amount() <= 0) {
            throw notAboveZero(what, quantity.amount(), quantity.unit());
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
        if (Double.isNaN(number)) {
            throw Refused.because(Refusal.NOT_A_NUMBER).with("what", what);
        }
        if (number < low || number > high) {
            throw outOfRange(what, number, unit, low, high);
        }
        return number;
    }

    private static Refused notAboveZero(String what, double number, String unit) {
        return outOfRange(what, number, unit, 0, LARGEST).with("bounds", "positive");
    }

    private static Refused outOfRange(String what, double number, String unit, double low, double high) {
        return Refused.because(Refusal.OUT_OF_RANGE)
                .with("what", what)
                .with("value", number)
                .with("unit", unit.isEmpty() ? "" : " " + unit)
                .with("bounds", "both")
                .with("low", low)
                .with("high", high);
    }
}
