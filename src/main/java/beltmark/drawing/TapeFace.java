package beltmark.drawing;

import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import beltmark.texts.Words;
import java.math.BigDecimal;

/**
 * The printed face of a tape: a graduation at each step, the longer the coarser, and a number at each inch or each ten
 * millimetres.
 *
 * @param graduation the divisions
 */
record TapeFace(Graduation graduation) {

    private static final Length TEN_MILLIMETRES = Length.ofMillimetres(10);
    private static final double WHOLE = 16;
    private static final double[] INCH_TICKS = {WHOLE, 12.5, 9.5, 7, 4.8, 3.4, 2.4};

    /** {@return the distance between two numbers} */
    Length numbered() {
        return isMetric() ? TEN_MILLIMETRES : Length.ofNanometres(LengthUnit.INCH.nanometres());
    }

    /** {@return how much of the tape is shown below the number under a mark; fine graduations are drawn larger} */
    Length shownBelow() {
        return numbered().times(isMetric() ? 2 : Math.min(1, 16.0 / graduation.perUnit()));
    }

    /** {@return how much of the tape is shown above the number under a mark} */
    Length shownAbove() {
        return shownBelow().plus(numbered());
    }

    /** {@return the nearest number at or below a height} */
    Length numberUnder(Length height) {
        long apart = numbered().nanometres();
        return Length.ofNanometres(Math.floorDiv(height.nanometres(), apart) * apart);
    }

    /** {@return whether there is a number at a graduation} */
    boolean isNumbered(Length height) {
        return height.nanometres() % numbered().nanometres() == 0;
    }

    /** {@return the number printed at a height} */
    String number(Length height) {
        return BigDecimal.valueOf(height.nanometres())
                .divide(BigDecimal.valueOf(graduation.unit().nanometres()))
                .toPlainString();
    }

    /** {@return a length as this tape prints it, with its unit} */
    String print(Length length, Words words) {
        return words.quantity(new Graduated(length, graduation));
    }

    /** {@return how long the graduation at a height is printed, in millimetres of paper} */
    double tick(Length height) {
        long index = height.nanometres() / graduation.step().nanometres();
        if (isMetric()) {
            return index % 10 == 0 ? WHOLE : index % 5 == 0 ? INCH_TICKS[1] : INCH_TICKS[3];
        }
        int level = 0;
        for (int apart = graduation.perUnit(); index % apart != 0; apart /= 2) {
            level++;
        }
        return INCH_TICKS[level];
    }

    private boolean isMetric() {
        return graduation.unit() == LengthUnit.MILLIMETRE;
    }
}
