package beltmark.core.units;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, held as a whole number of nanometres, so that sixty-fourths of an inch and tenths of a millimetre are both
 * exact: 1 in = 25,400,000 nm, 1/64 in = 396,875 nm. Lengths are signed; heights below a mark are negative.
 *
 * @param nanometres the length in nanometres; arithmetic that overflows throws {@link ArithmeticException}
 */
public record Length(long nanometres) implements Comparable<Length>, Quantity {

    /** No length. */
    public static final Length ZERO = new Length(0);

    private static final double NANOMETRES_PER_MILLIMETRE = LengthUnit.MILLIMETRE.nanometres();
    private static final double LARGEST = Long.MAX_VALUE;

    /** {@return a length of whole nanometres} */
    public static Length ofNanometres(long nanometres) {
        return new Length(nanometres);
    }

    /** {@return the length nearest to that many millimetres; refuses NaN and anything beyond about 9e12 mm} */
    public static Length ofMillimetres(double millimetres) {
        return ofNearest(millimetres * NANOMETRES_PER_MILLIMETRE);
    }

    /** {@return the length nearest to that many inches; refuses NaN and anything beyond about 3e11 in} */
    public static Length ofInches(double inches) {
        return ofNearest(inches * LengthUnit.INCH.nanometres());
    }

    /** {@return that many sixteenths of an inch, exactly} */
    public static Length ofSixteenths(long sixteenths) {
        return new Length(Math.multiplyExact(sixteenths, Graduation.SIXTEENTH_INCH.step().nanometres));
    }

    /** {@return an amount of a unit, to the nearest nanometre, halves to the even one} */
    public static Length of(BigDecimal amount, LengthUnit unit) {
        return new Length(amount.multiply(BigDecimal.valueOf(unit.nanometres()))
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact());
    }

    private static Length ofNearest(double nanometres) {
        if (!(Math.abs(nanometres) < LARGEST)) {
            throw Refused.because(Double.isNaN(nanometres) ? Refusal.NOT_A_NUMBER : Refusal.OUT_OF_RANGE)
                    .with("what", "length")
                    .with("value", nanometres / NANOMETRES_PER_MILLIMETRE)
                    .with("low", -LARGEST / NANOMETRES_PER_MILLIMETRE)
                    .with("high", LARGEST / NANOMETRES_PER_MILLIMETRE)
                    .with("bounds", "both")
                    .with("unit", " mm");
        }
        return new Length(Math.round(nanometres));
    }

    /** {@return this length in millimetres} */
    public double millimetres() {
        return nanometres / NANOMETRES_PER_MILLIMETRE;
    }

    /** {@return this length in inches} */
    public double inches() {
        return (double) nanometres / LengthUnit.INCH.nanometres();
    }

    /** {@return the sum of both} */
    public Length plus(Length other) {
        return new Length(Math.addExact(nanometres, other.nanometres));
    }

    /** {@return this less the other} */
    public Length minus(Length other) {
        return new Length(Math.subtractExact(nanometres, other.nanometres));
    }

    /** {@return this length the other way} */
    public Length negated() {
        return new Length(Math.negateExact(nanometres));
    }

    /** {@return the size of this length without its sign} */
    public Length abs() {
        return nanometres < 0 ? negated() : this;
    }

    /** {@return this many times over, to the nearest nanometre} */
    public Length times(double factor) {
        return ofNearest(nanometres * factor);
    }

    /** {@return the smaller of the two} */
    public static Length min(Length a, Length b) {
        return a.nanometres <= b.nanometres ? a : b;
    }

    /** {@return the larger of the two} */
    public static Length max(Length a, Length b) {
        return a.nanometres >= b.nanometres ? a : b;
    }

    /** {@return whether this is below zero} */
    public boolean isNegative() {
        return nanometres < 0;
    }

    /** {@return whether this and the other differ by no more than the tolerance} */
    public boolean isWithin(Length tolerance, Length other) {
        return minus(other).abs().nanometres <= tolerance.nanometres;
    }

    /**
     * Reads this length off a tape: the nearer graduation, and exactly midway the even one (NIST Handbook 44, s. 10.3).
     *
     * @param graduation the divisions of the tape
     * @return a whole number of graduations
     */
    public Length roundedTo(Graduation graduation) {
        long step = graduation.step().nanometres;
        long below = Math.floorDiv(nanometres, step);
        long twiceRest = 2 * Math.floorMod(nanometres, step);
        boolean up = twiceRest > step || (twiceRest == step && Math.floorMod(below, 2) == 1);
        return new Length((up ? below + 1 : below) * step);
    }

    @Override
    public double amount() {
        return millimetres();
    }

    @Override
    public String unit() {
        return LengthUnit.MILLIMETRE.symbol();
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }
}
