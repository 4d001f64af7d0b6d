package beltmark.core.units;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.core.units.LengthReading.Fault;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthReaderTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4 3/4",
                "4-3/4",
                "4¾",
                "4 ¾",
                "4.75",
                "4,75",
                "4 3/4 in",
                "4 3/4in",
                "4 3/4\"",
                "4 3/4 ″",
                "4 3/4 inches",
                " 4  3 / 4 ",
                "4 - 3/4",
                "4–3/4",
                "4 3⁄4",
                "4 12/16",
                "4 48/64",
                "4 3/4 IN",
                "120.65 mm",
                "120,65 mm",
                "120.65mm",
                "04 3/4"
            })
    void readsFourAndThreeQuartersHoweverItIsWritten(String typed) {
        assertEquals(
                Length.ofSixteenths(76),
                LengthReader.read(typed, LengthUnit.INCH).getLength());
    }

    @ParameterizedTest
    @CsvSource({"4 3/4, 4.75", "120.65, 120.65", "'120,65', 120.65", "4¾ , 4.75", "95 mm, 95", "7, 7"})
    void takesATextWithoutUnitInThePersonsOwn(String typed, double millimetres) {
        LengthReading reading = LengthReader.read(typed, LengthUnit.MILLIMETRE);
        assertEquals(Length.ofMillimetres(millimetres), reading.getLength());
        assertEquals(LengthUnit.MILLIMETRE, reading.unit());
    }

    @ParameterizedTest
    @CsvSource({"3/4, 12", "¾, 12", ".75, 12", "'0,75', 12", "0, 0", "0/16, 0", "4., 64", "15/16, 15"})
    void readsWhatIsLessThanAnInchToo(String typed, int sixteenths) {
        assertEquals(
                Length.ofSixteenths(sixteenths),
                LengthReader.read(typed, LengthUnit.INCH).getLength());
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "null",
            value = {
                "null, BLANK",
                "'', BLANK",
                "'   ', BLANK",
                "abc, NOT_A_LENGTH",
                "1/0, ZERO_DENOMINATOR",
                "4 1/0, ZERO_DENOMINATOR",
                "4 17/16, IMPROPER_FRACTION",
                "4 16/16, IMPROPER_FRACTION",
                "4 1/3, NOT_ON_A_TAPE",
                "4 1/128, NOT_ON_A_TAPE",
                "-4, NEGATIVE",
                "−1/2, NEGATIVE",
                "4 3/, NOT_A_LENGTH",
                "4 3, NOT_A_LENGTH",
                "1/2/4, NOT_A_LENGTH",
                "4 3/4 3/4, NOT_A_LENGTH",
                "4.5.6, NOT_A_LENGTH",
                "., NOT_A_LENGTH",
                "1e5, NOT_A_LENGTH",
                "NaN, NOT_A_LENGTH",
                "12 cm, UNKNOWN_UNIT",
                "4 ft, UNKNOWN_UNIT",
                "'1,250', AMBIGUOUS_COMMA",
                "99999999999999999999, TOO_LARGE",
                "٤, NOT_A_LENGTH",
                "<b>4</b>, NOT_A_LENGTH"
            })
    void saysWhyATextIsNoLength(String typed, Fault fault) {
        assertEquals(fault, LengthReader.read(typed, LengthUnit.INCH).fault());
    }

    @Test
    void refusesTenThousandCharactersAtOnce() {
        assertEquals(
                Fault.TOO_LONG,
                LengthReader.read("4".repeat(10_000), LengthUnit.INCH).fault());
    }

    @Test
    void readsBackWhateverIsPrinted() {
        for (Graduation graduation : Graduation.values()) {
            for (int i = 0; i < 2_000; i++) {
                Length length = Length.ofNanometres(graduation.step().nanometres() * i);
                String printed = LengthPrinter.print(length, graduation);
                assertEquals(length, LengthReader.read(printed, LengthUnit.INCH).getLength(), printed);
            }
        }
    }

    @Test
    void neverThrowsWhateverIsTyped() {
        String alphabet = "0123456789 /.,-'\"inm¾½⁄ x\u00a0\u2212";
        Random random = new Random(7);
        for (int i = 0; i < 200_000; i++) {
            StringBuilder typed = new StringBuilder();
            random.ints(random.nextInt(12), 0, alphabet.length()).forEach(at -> typed.append(alphabet.charAt(at)));
            assertDoesNotThrow(() -> LengthReader.read(typed.toString(), LengthUnit.INCH), typed::toString);
        }
    }
}
