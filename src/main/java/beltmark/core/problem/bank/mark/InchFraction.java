package beltmark.core.problem.bank.mark;

import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;

/**
 * A length in inches as it is written: whole inches and a fraction in lowest terms.
 *
 * @param whole inches, not negative
 * @param over the numerator; 0 when the length is whole
 * @param under the denominator, 2, 4, 8 or 16; 1 when the length is whole
 */
record InchFraction(int whole, int over, int under) {

    private static final int SIXTEEN = 16;

    /** {@return a length on the sixteenths, as it is written} */
    static InchFraction of(Length length) {
        int sixteenths = Math.toIntExact(
                length.nanometres() / Graduation.SIXTEENTH_INCH.step().nanometres());
        int rest = sixteenths % SIXTEEN;
        int common = rest == 0 ? SIXTEEN : Integer.lowestOneBit(rest);
        return new InchFraction(sixteenths / SIXTEEN, rest / common, SIXTEEN / common);
    }

    /** {@return whole inches and a fraction as a length, to the nearest nanometre; the fraction may be of any kind} */
    static Length length(int whole, int over, int under) {
        return Length.ofNanometres(LengthUnit.INCH.nanometres() * whole)
                .plus(Length.ofNanometres(Math.round((double) LengthUnit.INCH.nanometres() * over / under)));
    }

    boolean isWhole() {
        return over == 0;
    }

    /** {@return the fraction alone} */
    Length rest() {
        return length(0, over, under);
    }
}
