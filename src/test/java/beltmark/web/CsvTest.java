package beltmark.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@a", "\ta", "\ra", "\0a", "="})
    void guardsWhatASpreadsheetWouldRun(String text) {
        assertEquals("'" + text, Csv.guarded(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Ana", "a=b", "'=1", " =1", "Ü"})
    void leavesOtherTextsAsTheyAre(String text) {
        assertEquals(text, Csv.guarded(text));
    }
}
