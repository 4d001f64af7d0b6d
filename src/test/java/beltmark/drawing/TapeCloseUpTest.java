package beltmark.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.setup.Side;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TapeCloseUpTest {

    private static Svg tape(Length height, Graduation graduation, boolean told) {
        TapeCloseUp tape = new TapeCloseUp(TapeCloseUp.Mark.BELT, Side.LEFT, height);
        return Svg.of(tape.drawing(told, Svg.words(graduation)));
    }

    private static Stream<Length> heights() {
        return IntStream.range(0, 500).mapToObj(i -> Length.ofSixteenths(320 + i));
    }

    private static double y(Element line) {
        assertEquals(line.attr("y1"), line.attr("y2"));
        return Svg.number(line, "y1");
    }

    @ParameterizedTest
    @CsvSource({
        // graduation, how many, how many different lengths, how many numbers: worked by hand
        "EIGHTH_INCH, 25, 4, 4",
        "SIXTEENTH_INCH, 49, 5, 4",
        "THIRTY_SECOND_INCH, 65, 6, 2",
        "SIXTY_FOURTH_INCH, 97, 7, 2",
        "MILLIMETRE, 51, 3, 6"
    })
    void graduatesAsTheTapeIsPrinted(Graduation graduation, int count, int lengths, int numbers) {
        Svg svg = tape(Sample.inches("24 5/16"), graduation, false);
        List<Element> lines = svg.root().select("line.d-graduation");
        assertEquals(count, lines.size());
        assertEquals(
                lengths, lines.stream().map(line -> line.attr("x1")).distinct().count());
        assertEquals(numbers, svg.root().select("text.d-number").size());
    }

    @Test
    void printsTheNumbersOfTheReadersUnit() {
        Length height = Sample.inches("24 5/16");
        assertEquals(
                List.of("23", "24", "25", "26"),
                tape(height, Graduation.SIXTEENTH_INCH, false)
                        .root()
                        .select("text.d-number")
                        .eachText());
        assertEquals(
                List.of("590", "600", "610", "620", "630", "640"),
                tape(height, Graduation.MILLIMETRE, false)
                        .root()
                        .select("text.d-number")
                        .eachText());
    }

    @ParameterizedTest
    @EnumSource(Graduation.class)
    void drawsTheMarkExactlyToScale(Graduation graduation) {
        heights().forEach(height -> {
            Svg svg = tape(height, graduation, false);
            Element mark = svg.root().expectFirst("line.d-mark");
            Element low = svg.root().expectFirst("line.d-graduation");
            TapeFace face = new TapeFace(graduation);
            Length shown = height.minus(face.numberUnder(height).minus(face.shownBelow()));
            assertEquals(shown.millimetres() / svg.scale(), y(low) - y(mark), Svg.ROUNDING, height.toString());
        });
    }

    @Test
    void putsTheMarkOnItsGraduation() {
        heights().forEach(height -> {
            Svg svg = tape(height, Graduation.SIXTEENTH_INCH, false);
            double mark = y(svg.root().expectFirst("line.d-mark"));
            assertTrue(svg.root().select("line.d-graduation").stream()
                    .anyMatch(line -> Math.abs(y(line) - mark) < Svg.ROUNDING));
        });
    }

    @ParameterizedTest
    @EnumSource(Graduation.class)
    void neverTellsTheReadingBeforeItIsAnswered(Graduation graduation) {
        heights().forEach(height -> {
            Svg svg = tape(height, graduation, false);
            assertFalse(svg.source().contains(Svg.words(graduation).length(height)), svg.source());
            assertTrue(svg.root().select("[data-nm]").isEmpty());
        });
    }

    @Test
    void differsOnlyInGeometryAndWhereTheMarkIsSaidToBe() {
        Svg one = tape(Sample.inches("24 5/16"), Graduation.SIXTEENTH_INCH, false);
        Svg other = tape(Sample.inches("24 11/16"), Graduation.SIXTEENTH_INCH, false);
        one.root().expectFirst("desc").text("");
        other.root().expectFirst("desc").text("");
        assertEquals(one.told(), other.told());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    24 5/16  | SIXTEENTH_INCH | The belt mark lies 5 graduations above the number 24.
                    24       | SIXTEENTH_INCH | The belt mark lies on the number 24.
                    24 1/16  | SIXTEENTH_INCH | The belt mark lies 1 graduation above the number 24.
                    24 5/16  | EIGHTH_INCH    | The belt mark lies midway between graduations 2 and 3 above the number 24.
                    24 15/16 | EIGHTH_INCH    | The belt mark lies midway between graduations 7 and 8 above the number 24.
                    24 5/16  | MILLIMETRE     | The belt mark lies midway between graduations 7 and 8 above the number 610.
                    24 1/16  | MILLIMETRE     | The belt mark lies a little above the first graduation above the number 610.
                    24 1/4   | MILLIMETRE     | The belt mark lies 6 graduations above the number 610.
                    """)
    void saysWhatIsSeenAndLeavesTheAddingUp(String inches, Graduation graduation, String said) {
        String heard = tape(Sample.inches(inches), graduation, false)
                .root()
                .expectFirst("desc")
                .text();
        assertTrue(heard.endsWith(said), heard);
    }

    @Test
    void tellsTheReadingAndDimensionsTheRestOnceAnswered() {
        Svg svg = tape(Sample.inches("24 5/16"), Graduation.SIXTEENTH_INCH, true);
        assertTrue(
                svg.texts().containsAll(List.of("24 5/16 in", "5/16 in")),
                svg.texts().toString());
        assertEquals(
                "7937500", svg.root().expectFirst("[data-dimension=rest-left]").attr("data-nm"));
        assertTrue(svg.root().expectFirst("desc").text().endsWith("It reads 24 5/16 in."));
    }

    @Test
    void servesMountMarksToo() {
        TapeCloseUp tape = new TapeCloseUp(TapeCloseUp.Mark.MOUNT, Side.RIGHT, Sample.inches("29 1/16"));
        Svg svg = Svg.of(tape.drawing(true, Svg.words(Graduation.SIXTEENTH_INCH)));
        assertTrue(
                svg.texts().containsAll(List.of("mount mark", "right side", "29 1/16 in")),
                svg.texts().toString());
    }
}
