package beltmark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.qualification.Consequence;
import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.Needs;
import beltmark.core.qualification.QualificationRule;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QualificationFileTest {

    private static final String SOUND = """
            id: some-rule
            version: 1
            validFrom: 2026-01-01
            source: site policy
            card: wide-belt-rig
            clean:
              - {family: bench, count: 3}
              - {family: orientation, count: 2}
            quiz: {id: lockout, countsForDays: 365}
            demonstrations: {count: 1, countsForDays: 365}
            dueSoonDays: 30
            events:
              - {event: inspection-failed, effect: hold}
              - {event: long-absence, afterDays: 90, effect: lapse-until, needs: [quiz, demonstrations]}
            """;

    private final List<ContentFault> faults = new ArrayList<>();

    @Test
    void readsASoundFile() {
        QualificationRule rule = read(SOUND).orElseThrow();
        assertEquals(List.of(), faults);
        assertEquals(Optional.of("wide-belt-rig"), rule.card());
        assertEquals(2, rule.needs().clean().size());
        assertEquals(
                List.of(
                        Consequence.hold(EventKind.INSPECTION_FAILED),
                        Consequence.absence(90, Set.of(Needs.Kind.QUIZ, Needs.Kind.DEMONSTRATIONS))),
                rule.consequences());
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "card: wide-belt-rig,    card: moon-rig,              5,  There is no hardware card",
                "family: orientation,    family: juggling,            8,  There is no problem family",
                "family: orientation,    family: bench,               8,  named twice",
                "count: 2,               count: 0,                    8,  not 1 to 10",
                "countsForDays: 365,     countsForDays: soon,         9,  a whole number",
                "dueSoonDays: 30,        dueSoonDays: 400,            1,  lasts only 365",
                "dueSoonDays: 30,        dueSoon: 30,                 11, There is no field dueSoon",
                "source: site policy,    source: '',                  4,  source",
                "2026-01-01,             yesterday,                   3,  a date",
                "effect: hold,           effect: shout,               13, hold",
                "inspection-failed,      long-absence,                13, afterDays",
                "afterDays: 90,          afterDays: 9,                14, 28 at least",
                "afterDays: 90,          days: 90,                    14, afterDays is missing",
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
    void theLifeOfTheWholeCapsItsNeedsAndStandsInForThem() {
        String capped = SOUND.replace("dueSoonDays: 30", "lifeDays: 200\ndueSoonDays: 30")
                .replace("{count: 1, countsForDays: 365}", "{count: 1}");
        Needs needs = read(capped).orElseThrow().needs();
        assertEquals(200, needs.quiz().orElseThrow().days());
        assertEquals(200, needs.demonstrations().orElseThrow().days());
    }

    @Test
    void rulesThatDoNotGoTogetherAreRefused() {
        String needy = SOUND.replace("dueSoonDays: 30", "prerequisites: [moon]\ndueSoonDays: 30");
        ContentFile file = file("content/qualifications/some-rule.yaml", needy);
        ContentFaults refused = assertThrows(
                ContentFaults.class,
                () -> Content.read(
                        ContentFile.list("content/hardware"),
                        ContentFile.list("content/problems"),
                        List.of(file),
                        List.of()));
        assertTrue(refused.faults().get(0).text().contains("no qualification moon"), refused::toString);
    }

    @Test
    void everyCardHasItsRule() {
        assertEquals(
                Sample.content().cards().stream().map(card -> card.id()).collect(Collectors.toSet()),
                Sample.content().rules().all().stream()
                        .flatMap(rule -> rule.card().stream())
                        .collect(Collectors.toSet()));
    }

    @Test
    void everyRuleNamesTheQuizThereIs() {
        Sample.content().rules().all().stream()
                .flatMap(rule -> rule.needs().quiz().stream())
                .forEach(quiz -> assertEquals("lockout", quiz.id()));
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
