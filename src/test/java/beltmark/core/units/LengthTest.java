package beltmark.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {

    @Test
    void hasExactlyTwentyFivePointFourMillimetresToTheInch() {
        // NIST SP 811, appendix B: factors in bold are exact; the factor itself from memory
        assertEquals(Length.ofMillimetres(25.4), Length.ofInches(1));
    }

    @Test
    void holdsSixtyFourthsAndTenthsOfAMillimetreExactly() {
        assertEquals(396_875, Graduation.SIXTY_FOURTH_INCH.step().nanometres());
        assertEquals(100_000, Length.ofMillimetres(0.1).nanometres());
    }

    /** NIST Handbook 44, s. 10.3: to the nearer graduation, exactly midway to the even one. */
    @ParameterizedTest
    @CsvSource({"1, 0", "3, 4", "5, 4", "7, 8", "2, 2", "-1, 0", "-3, -4"})
    void roundsHalfWayToTheEvenGraduation(int thirtySeconds, int expectedThirtySeconds) {
        Length thirtySecond = Graduation.THIRTY_SECOND_INCH.step();
        Length length = Length.ofNanometres(thirtySecond.nanometres() * thirtySeconds);
        assertEquals(
                thirtySecond.nanometres() * expectedThirtySeconds,
                length.roundedTo(Graduation.SIXTEENTH_INCH).nanometres());
    }

    @Test
    void refusesWhatIsNoFiniteLength() {
        assertThrows(IllegalArgumentException.class, () -> Length.ofMillimetres(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Length.ofInches(1e300));
        assertThrows(
                ArithmeticException.class,
                () -> Length.ofNanometres(Long.MAX_VALUE).plus(Length.ofNanometres(1)));
    }

    @ParameterizedTest
    @CsvSource({
        "120650000, INCH, 4 3/4 in",
        "120650000, MILLIMETRE, 120.65 mm",
        "119380000, INCH, 4.7 in",
        "102393750, INCH, 4 1/32 in",
        "846100000, INCH, 33.311 in",
        "0, MILLIMETRE, 0 mm"
    })
    void printsExactlyWhatWasTyped(long nanometres, LengthUnit unit, String expected) {
        assertEquals(expected, LengthPrinter.exact(Length.ofNanometres(nanometres), unit));
    }

    @ParameterizedTest
    @CsvSource({
        "76, SIXTEENTH_INCH, 4 3/4 in",
        "1, SIXTEENTH_INCH, 1/16 in",
        "0, SIXTEENTH_INCH, 0 in",
        "-8, SIXTEENTH_INCH, -1/2 in",
        "-24, SIXTEENTH_INCH, -1 1/2 in",
        "1, EIGHTH_INCH, 0 in",
        "3, EIGHTH_INCH, 1/4 in",
        "76, MILLIMETRE, 120.6 mm",
        "16, MILLIMETRE, 25.4 mm",
        "160, MILLIMETRE, 254 mm"
    })
    void printsTheWayATapeIsRead(int sixteenths, Graduation graduation, String expected) {
        assertEquals(expected, LengthPrinter.print(Length.ofSixteenths(sixteenths), graduation));
    }
}
