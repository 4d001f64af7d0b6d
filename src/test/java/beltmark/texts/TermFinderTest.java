package beltmark.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TermFinderTest {

    private static final TermFinder FINDER = new TermFinder(Map.of(
            "take-up", "take-up",
            "take-up weight", "weight",
            "belt mark", "belt-mark",
            "belt marks", "belt-mark",
            "división", "graduation",
            "tip", "tip"));

    private static List<String> find(String... sentences) {
        return FINDER.find(List.of(sentences));
    }

    @Test
    void takesTheLongerOfTwoThatBeginTogether() {
        assertEquals(List.of("weight"), find("The take-up weight hangs free."));
        assertEquals(List.of("weight", "take-up"), find("The take-up weight of the take-up."));
    }

    @Test
    void findsWholeWordsOnly() {
        assertEquals(List.of(), find("A tipper tiptoes; tip2, multip."));
    }

    @Test
    void takesCapitalsAndAccentsAsTheyCome() {
        assertEquals(List.of("belt-mark", "graduation"), find("Belt Mark y DIVISIÓN."));
        assertEquals(List.of(), find("divisional, subdivisión"));
    }

    @Test
    void namesEachOnceInTheOrderOfTheText() {
        assertEquals(List.of("tip", "belt-mark"), find("(tip), belt marks", "belt mark and tip"));
    }

    @Test
    void findsNothingWithoutTerms() {
        assertEquals(List.of(), new TermFinder(Map.of()).find(List.of("belt mark")));
    }
}
