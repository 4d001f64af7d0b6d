package beltmark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.qualification.QualificationRule;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QualificationFileTest {

    private static final String SOUND = """
            id: some-rule
            version: 1
            source: site policy
            card: wide-belt-rig
            clean:
              - {family: bench, count: 3}
              - {family: orientation, count: 2}
            quiz: {id: lockout, countsForDays: 365}
            demonstrations: {count: 1, countsForDays: 365}
            dueSoonDays: 30
            """;

    private final List<ContentFault> faults = new ArrayList<>();

    @Test
    void readsASoundFile() {
        QualificationRule rule = read(SOUND).orElseThrow();
        assertEquals(List.of(), faults);
        assertEquals("wide-belt-rig", rule.card());
        assertEquals(2, rule.clean().size());
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "card: wide-belt-rig,    card: moon-rig,              4,  There is no hardware card",
                "family: orientation,    family: juggling,            7,  There is no problem family",
                "family: orientation,    family: bench,               7,  named twice",
                "count: 2,               count: 0,                    7,  not at least 1",
                "countsForDays: 365,     countsForDays: soon,         8,  a whole number",
                "dueSoonDays: 30,        dueSoonDays: 400,            1,  lasts only 365",
                "dueSoonDays: 30,        dueSoon: 30,                 10, There is no field dueSoon",
                "source: site policy,    source: '',                  3,  source",
                "id: some-rule,          id: other-rule,              1,  file's name"
            })
    void aFaultIsToldWithFileLineAndSentence(String sound, String broken, int line, String sentence) {
        assertTrue(SOUND.contains(sound), sound);
        assertTrue(read(SOUND.replace(sound, broken)).isEmpty());
        assertTrue(
                faults.stream()
                        .anyMatch(fault -> fault.line() == line && fault.text().contains(sentence)),
                faults::toString);
    }

    @Test
    void everyCardHasItsRule() {
        assertEquals(
                Sample.content().cards().stream().map(card -> card.id()).collect(Collectors.toSet()),
                Sample.content().rules().stream().map(QualificationRule::card).collect(Collectors.toSet()));
    }

    @Test
    void everyRuleNamesTheQuizThereIs() {
        Sample.content().rules().forEach(rule -> assertEquals("lockout", rule.quiz()));
    }

    @Test
    void aChecklistThatNamesAnObservationTwiceIsRefused() {
        ContentFile file =
                file("content/demonstrations/job.yaml", "id: job\nversion: 1\nsource: x\nobservations: [a, a]\n");
        ContentFaults refused =
                assertThrows(ContentFaults.class, () -> Content.read(List.of(), List.of(), List.of(), List.of(file)));
        assertEquals(4, refused.faults().get(0).line());
    }

    private Optional<QualificationRule> read(String yaml) {
        return QualificationFile.read(
                file("content/qualifications/some-rule.yaml", yaml),
                Sample.content().cards(),
                Sample.content().families(),
                faults);
    }

    private static ContentFile file(String path, String yaml) {
        return new ContentFile(path, yaml.getBytes(StandardCharsets.UTF_8));
    }
}
