package beltmark.people.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import beltmark.people.intake.RosterFile.Line;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as RFC 4180 describes them, and as spreadsheets depart from it. */
class RosterFileTest {

    private static final List<Line> TWO_ROWS =
            List.of(new Line(1, List.of("name", "crew")), new Line(2, List.of("Ana Beltrán", "Night crew")));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "name,crew\r\nAna Beltrán,Night crew\r\n",
                "name,crew\nAna Beltrán,Night crew",
                "name,crew\rAna Beltrán,Night crew\r",
                "\uFEFFname,crew\r\nAna Beltrán,Night crew\r\n",
                "name;crew\r\nAna Beltrán;Night crew\r\n",
                "name\tcrew\nAna Beltrán\tNight crew\n",
                "\"name\",\"crew\"\r\n\"Ana Beltrán\",\"Night crew\"\r\n",
                " name , crew \r\n Ana  Beltrán , Night crew \r\n,\r\n"
            })
    void readsTheSameRowsHoweverTheyAreWritten(String text) {
        assertEquals(TWO_ROWS, RosterFile.read(text));
    }

    @Test
    void tellsTheLineWhereARowBegins() {
        List<Line> lines =
                RosterFile.read("name,crew\r\n\r\n\"Ana\r\nBeltrán\",Night crew\r\nTomasz Wilk,Day crew\r\n");
        assertEquals(List.of(1L, 3L, 5L), lines.stream().map(Line::line).toList());
        assertEquals("Ana Beltrán", lines.get(1).cells().get(0));
    }

    @Test
    void takesAwayTheGuardOfOurOwnExports() {
        assertEquals("=x", RosterFile.read("name\n'=x").get(1).cells().get(0));
        assertEquals(
                "'t Hooft", RosterFile.read("name\n't Hooft").get(1).cells().get(0));
    }

    @Test
    void decodesWhatWesternSpreadsheetsWrite() {
        assertEquals("Núñez", RosterFile.decode("Núñez".getBytes(StandardCharsets.UTF_8)));
        assertEquals("Núñez", RosterFile.decode("Núñez".getBytes(Charset.forName("windows-1252"))));
    }

    @Test
    void refusesAQuotationMarkThatNeverEnds() {
        assertThrows(IllegalArgumentException.class, () -> RosterFile.read("name,crew\n\"Ana,Night crew\n"));
    }
}
