package beltmark.core.measure;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounds what is read and what is printed; exactly midway goes to the even one. */
public final class Rounding {

    private static final int MOST_PLACES = 12;

    private Rounding() {}

    /**
     * Rounds a length to a graduation of the tape (NIST Handbook 44, s. 10.3, seen as an excerpt).
     *
     * @param length any length
     * @param graduation of the tape
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Length> toGraduation(Length length, Graduation graduation) {
        Length rounded = Limits.signed("length", length).roundedTo(graduation);
        return Solution.of(
                rounded,
                Step.of("rounded-to-graduation", "length", length)
                        .with("graduation", graduation.step())
                        .with("rounded", rounded));
    }

    /**
     * Rounds a decimal number, halves to even (ASTM E29, seen through a field manual). The number counts as it is printed:
     * 2.675 is a half although the binary number is a little less.
     *
     * @param number any number
     * @param places decimal places, a whole number, 0..12
     * @throws Refused NOT_A_NUMBER, OUT_OF_RANGE, NOT_WHOLE
     */
    public static Solution<Ratio> toPlaces(double number, double places) {
        Limits.finite("number", number);
        Limits.within("places", places, 0, MOST_PLACES);
        int whole = (int) places;
        if (whole != places) {
            throw Refused.because(Refusal.NOT_WHOLE).with("what", "places").with("value", places);
        }
        Ratio rounded = new Ratio(BigDecimal.valueOf(number)
                .setScale(whole, RoundingMode.HALF_EVEN)
                .doubleValue());
        return Solution.of(
                rounded,
                Step.of("rounded-decimals", "number", new Ratio(number))
                        .with("places", new Ratio(whole))
                        .with("rounded", rounded));
    }
}
