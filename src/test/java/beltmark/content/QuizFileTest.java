package beltmark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.lockout.Quiz;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuizFileTest {

    private static final Set<String> KEYS = Set.of(
            "small.rules.osha-gi",
            "small.question.one.name",
            "small.question.one.ask",
            "small.question.one.why",
            "small.question.one.option.a",
            "small.question.one.option.b",
            "small.question.one.option.c");

    private static final String SOUND = """
            id: small
            version: 1
            passPercent: 80
            questions:
              - id: one
                facts: [Q017]
                mark: SAW
                source: 29 CFR 1910.147(b)
                rules: [osha-gi]
                kind: choice
                point: isolation
                options: [a, b, c]
                right: [b]
                topic: scope
                audience: both
                basis: rule
                reviewed: true
            """;

    private final List<ContentFault> faults = new ArrayList<>();

    @Test
    void readsASoundFile() {
        Quiz quiz = read(SOUND).orElseThrow();

        assertEquals(List.of(), faults);
        assertEquals(List.of("b"), quiz.question("one").right());
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "mark: SAW,                       mark: HEARD,                7",
                "mark: SAW,                       mark: SAW (state),          7",
                "source: 29 CFR 1910.147(b),      source: '',                 8",
                "rules: [osha-gi],                rules: [osha-moon],         9",
                "kind: choice,                    kind: riddle,              10",
                "kind: choice,                    kind: put-in-order,        13",
                "audience: both,                  audience: nobody,          15",
                "basis: rule,                     basis: rumour,             16",
                "reviewed: true,                  reviewed: perhaps,         17",
                "mark: SAW,                       mark: INFERENCE,           16",
                "\"options: [a, b, c]\",          options: [b],              12",
                "\"options: [a, b, c]\",          \"options: [a, b, d]\",    12",
                "\"options: [a, b, c]\",          \"options: [a, b, b]\",     5",
                "right: [b],                      right: [],                 13",
                "right: [b],                      right: [z],                13",
                "right: [b],                      \"right: [a, b]\",         13",
                "passPercent: 80,                 passPercent: 101,           1",
                "id: small,                       id: other,                  1",
                "- id: one,                       - id: two,                  5",
            })
    void namesTheLineOfAFault(String sound, String broken, int line) {
        assertTrue(SOUND.contains(sound), sound);

        assertTrue(read(SOUND.replace(sound, broken)).isEmpty());
        assertTrue(faults.stream().anyMatch(fault -> fault.line() == line), faults::toString);
    }

    @Test
    void refusesTwoQuestionsOfOneId() {
        String question = SOUND.substring(SOUND.indexOf("  - id: one"));

        assertTrue(read(SOUND + question).isEmpty());
        assertEquals(18, faults.get(0).line());
    }

    @Test
    void findsAllFaultsInOneReading() {
        read(SOUND.replace("mark: SAW", "mark: HEARD").replace("right: [b]", "right: [z]"));

        assertEquals(2, faults.size());
    }

    private Optional<Quiz> read(String yaml) {
        ContentFile file = new ContentFile("content/quizzes/small.yaml", yaml.getBytes(StandardCharsets.UTF_8));
        return QuizFile.read(file, new QuestionFields("small", KEYS), faults).map(QuizFile.Fixed::quiz);
    }
}
