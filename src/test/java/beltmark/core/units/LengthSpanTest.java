package beltmark.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthSpanTest {

    /** By hand: 100 mm is 3.937 in and 5000 mm is 196.85 in. */
    @ParameterizedTest
    @CsvSource({
        "38, INCH, INSIDE",
        "100, MILLIMETRE, INSIDE",
        "5000, MILLIMETRE, INSIDE",
        "99.9, MILLIMETRE, OTHER_UNIT",
        "38, MILLIMETRE, OTHER_UNIT",
        "730, INCH, OTHER_UNIT",
        "730 in, MILLIMETRE, OTHER_UNIT",
        "3, MILLIMETRE, OUT_OF_RANGE",
        "0, INCH, OUT_OF_RANGE",
        "6000, MILLIMETRE, OUT_OF_RANGE",
        "6000, INCH, OUT_OF_RANGE"
    })
    void tellsTheOtherUnitFromWhatFitsNeither(String typed, LengthUnit unit, LengthSpan.Fit fit) {
        LengthSpan beltMark = LengthSpan.ofMillimetres(100, 5000);
        assertEquals(fit, beltMark.fit(LengthReader.read(typed, unit)));
    }

    @Test
    void isNeverUpsideDown() {
        assertThrows(IllegalArgumentException.class, () -> LengthSpan.ofMillimetres(2, 1));
    }
}
