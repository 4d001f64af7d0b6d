package beltmark.core.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class SittingOrderTest {

    private static final Quiz QUIZ = SampleQuiz.quiz();

    @Test
    void theSameSeedGivesTheSameOrder() {
        assertEquals(SittingOrder.of(QUIZ, 42), SittingOrder.of(QUIZ, 42));
    }

    @Test
    void isTheSameOnEveryJava() {
        SittingOrder order = SittingOrder.of(QUIZ, 42);

        assertEquals(List.of("q3", "q4", "q2", "q1", "q5"), order.questions());
        assertEquals(List.of("d", "c", "a", "b"), order.optionsOf("q1"));
    }

    @Test
    void everyQuestionAndOptionIsShownOnce() {
        for (long seed = 0; seed < 1000; seed++) {
            SittingOrder order = SittingOrder.of(QUIZ, seed);
            assertEquals(Set.of("q1", "q2", "q3", "q4", "q5"), new HashSet<>(order.questions()));
            assertEquals(5, order.questions().size());
            QUIZ.questions()
                    .forEach(question -> assertEquals(
                            question.options(),
                            order.optionsOf(question.id()).stream().sorted().toList()));
        }
    }

    @Test
    void theOrderDoesNotDependOnTheKey() {
        Question one = QUIZ.questions().get(0);
        Question other = new Question(one.id(), one.kind(), one.critical(), one.options(), List.of("d"), one.source());
        Quiz sameButForTheKey = new Quiz(
                QUIZ.id(),
                QUIZ.version(),
                QUIZ.passPercent(),
                List.of(
                        other,
                        QUIZ.questions().get(1),
                        QUIZ.questions().get(2),
                        QUIZ.questions().get(3),
                        QUIZ.questions().get(4)));

        assertEquals(SittingOrder.of(QUIZ, 7), SittingOrder.of(sameButForTheKey, 7));
    }

    @Test
    void theRightOptionComesInEveryPlaceAboutAsOften() {
        for (int place = 0; place < 4; place++) {
            int at = place;
            long times = LongStream.range(0, 4000)
                    .filter(seed ->
                            SittingOrder.of(QUIZ, seed).optionsOf("q1").get(at).equals("b"))
                    .count();
            assertTrue(times > 850 && times < 1150, "place " + place + ": " + times + " of 4000");
        }
    }
}
