package beltmark.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.units.Graduation;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The words of the trade as shipped: told once, and used as they are told. */
class GlossaryTest {

    private static final int FEWEST = 45;
    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);

    private static Glossary glossary(Language language) {
        return TEXTS.words(language, Graduation.SIXTEENTH_INCH).glossary();
    }

    @ParameterizedTest
    @EnumSource
    void everyTermOccursInTheOtherTexts(Language language) {
        List<String> sentences = TEXTS.patterns(language).entrySet().stream()
                .filter(text -> !text.getKey().startsWith("glossary."))
                .map(text -> text.getValue().replaceAll("\\{\\w+}", ""))
                .toList();
        Set<String> found = glossary(language).findIn(sentences).stream()
                .map(Term::id)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> all =
                glossary(language).terms().stream().map(Term::id).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(all, found, "use these words, or take them out");
        assertTrue(all.size() >= FEWEST, all::toString);
    }

    @ParameterizedTest
    @EnumSource
    void everyFormBelongsToOneTerm(Language language) {
        Map<String, Long> uses = TEXTS.patterns(language).entrySet().stream()
                .filter(text -> text.getKey().matches("glossary\\.term\\..*\\.found"))
                .flatMap(text -> List.of(text.getValue().split(", ")).stream())
                .collect(Collectors.groupingBy(form -> form, Collectors.counting()));
        uses.values().removeIf(count -> count == 1);
        assertEquals(Map.of(), uses);
    }

    @Test
    void tellsTheWordOfTheOtherLanguage() {
        Term english =
                glossary(Language.EN).findIn(List.of("Read the belt marks.")).get(0);
        assertEquals("marca de banda", english.otherWord());
        assertEquals(Language.ES, english.otherLanguage());
        Term spanish = glossary(Language.ES)
                .findIn(List.of("Lea las marcas de banda."))
                .get(0);
        assertEquals("belt mark", spanish.otherWord());
    }
}
