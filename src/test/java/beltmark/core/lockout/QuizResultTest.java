package beltmark.core.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuizResultTest {

    // q1 and q2 are critical, four of five pass
    @ParameterizedTest
    @CsvSource({
        "RIGHT, RIGHT, RIGHT, RIGHT, RIGHT, 5, true",
        "RIGHT, RIGHT, WRONG, RIGHT, RIGHT, 4, true",
        "RIGHT, WRONG, RIGHT, RIGHT, RIGHT, 4, false",
        "RIGHT, RIGHT, WRONG, WRONG, RIGHT, 3, false",
        "WRONG, WRONG, WRONG, WRONG, WRONG, 0, false",
        "BLANK, RIGHT, RIGHT, RIGHT, RIGHT, 4, false",
    })
    void passesOnlyWithTheScoreAndEveryCriticalQuestion(
            Judgement q1, Judgement q2, Judgement q3, Judgement q4, Judgement q5, int right, boolean passed) {
        QuizResult result = QuizResult.of(
                SampleQuiz.quiz(), new TreeMap<>(Map.of("q1", q1, "q2", q2, "q3", q3, "q4", q4, "q5", q5)));

        assertEquals(right, result.right());
        assertEquals(passed, result.passed());
    }

    @Test
    void namesTheCriticalMissesInTheOrderOfTheQuiz() {
        QuizResult result = QuizResult.of(SampleQuiz.quiz(), Map.of("q3", Judgement.RIGHT));

        assertEquals(List.of("q1", "q2"), result.criticalMisses());
    }

    @ParameterizedTest
    @CsvSource({"20, 80, 16", "18, 80, 15", "12, 80, 10", "5, 100, 5", "7, 1, 1"})
    void thePassMarkIsRoundedUpToAWholeQuestion(int questions, int percent, int needed) {
        List<Question> all = IntStream.range(0, questions)
                .mapToObj(number -> SampleQuiz.choice("q" + number, false))
                .toList();

        assertEquals(needed, new Quiz("lockout", 1, percent, all).neededToPass());
    }

    @Test
    void refusesAQuizWithTwoQuestionsOfOneId() {
        Question question = SampleQuiz.choice("q", false);

        assertThrows(IllegalArgumentException.class, () -> new Quiz("lockout", 1, 80, List.of(question, question)));
    }

    @ParameterizedTest
    @CsvSource({"0", "101"})
    void refusesAPassMarkOutOfRange(int percent) {
        List<Question> one = List.of(SampleQuiz.choice("q", false));

        assertThrows(IllegalArgumentException.class, () -> new Quiz("lockout", 1, percent, one));
    }
}
