package beltmark.core.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints lengths the way a tape is read: inch fractions in lowest terms, or millimetres to a tenth. */
public final class LengthPrinter {

    private LengthPrinter() {}

    /**
     * Prints to the nearest graduation, ties to the even one; millimetres keep one decimal where it is not zero, because
     * hardware measured in inches falls between millimetre graduations.
     *
     * @param length any length
     * @param graduation how fine, and in which unit
     * @return for example {@code 4 3/4 in}, {@code -1/16 in}, {@code 120.7 mm}
     */
    public static String print(Length length, Graduation graduation) {
        return number(length, graduation) + " " + graduation.unit().symbol();
    }

    /** {@return what {@link #print} prints, without the unit} */
    public static String number(Length length, Graduation graduation) {
        return graduation.unit() == LengthUnit.MILLIMETRE ? decimal(length) : fraction(length, graduation);
    }

    /**
     * Prints a length without rounding it to a tape: as a fraction where it lies on sixty-fourths of an inch, else as a
     * decimal number of at most four places in inches or three in millimetres.
     *
     * @param length any length
     * @param unit the unit to tell it in
     * @return for example {@code 4 3/4 in}, {@code 4.7 in}, {@code 120.65 mm}
     */
    public static String exact(Length length, LengthUnit unit) {
        Graduation finest = Graduation.SIXTY_FOURTH_INCH;
        if (unit == LengthUnit.INCH && length.roundedTo(finest).equals(length)) {
            return print(length, finest);
        }
        int places = unit == LengthUnit.INCH ? 4 : 3;
        BigDecimal amount = BigDecimal.valueOf(length.nanometres())
                .divide(BigDecimal.valueOf(unit.nanometres()), places, RoundingMode.HALF_EVEN);
        return plain(amount) + " " + unit.symbol();
    }

    private static String decimal(Length length) {
        BigDecimal tenths = BigDecimal.valueOf(length.nanometres(), 6).setScale(1, RoundingMode.HALF_EVEN);
        return plain(tenths);
    }

    private static String plain(BigDecimal amount) {
        return amount.signum() == 0 ? "0" : amount.stripTrailingZeros().toPlainString();
    }

    private static String fraction(Length length, Graduation graduation) {
        long divisions =
                length.roundedTo(graduation).nanometres() / graduation.step().nanometres();
        long size = Math.abs(divisions);
        long whole = size / graduation.perUnit();
        long numerator = size % graduation.perUnit();
        long common = Math.max(1, Long.lowestOneBit(numerator | graduation.perUnit()));
        String sign = divisions < 0 ? "-" : "";
        if (numerator == 0) {
            return sign + whole;
        }
        String rest = numerator / common + "/" + graduation.perUnit() / common;
        return sign + (whole == 0 ? rest : whole + " " + rest);
    }
}
