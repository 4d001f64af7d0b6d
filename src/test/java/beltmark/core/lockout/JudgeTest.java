package beltmark.core.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JudgeTest {

    // choice: b is right; several-of: a and c are right
    @ParameterizedTest
    @CsvSource({
        "CHOICE, b, RIGHT",
        "CHOICE, a, WRONG",
        "CHOICE, '', BLANK",
        "CHOICE, a b, SEVERAL_CHOSEN",
        "CHOICE, z, NOT_OFFERED",
        "SEVERAL_OF, a c, RIGHT",
        "SEVERAL_OF, a, WRONG",
        "SEVERAL_OF, a b c, WRONG",
        "SEVERAL_OF, b d, WRONG",
        "SEVERAL_OF, '', BLANK",
        "SEVERAL_OF, a z, NOT_OFFERED",
    })
    void judgesWhatIsChosen(QuestionKind kind, String chosen, Judgement expected) {
        Question question = kind == QuestionKind.CHOICE ? SampleQuiz.choice("q", false) : SampleQuiz.severalOf("q");

        assertEquals(expected, Judge.judge(question, Answer.ofChosen(words(chosen))));
    }

    // the right order is c, a, b; the places are those of a, b and c, 0 for left blank
    @ParameterizedTest
    @CsvSource({
        "2, 3, 1, RIGHT",
        "1, 2, 3, WRONG",
        "0, 0, 0, BLANK",
        "2, 0, 1, PLACE_MISSING",
        "2, 2, 1, PLACE_TWICE",
        "2, 2, 0, PLACE_TWICE",
        "2, 4, 1, NOT_OFFERED",
        "2, -3, 1, NOT_OFFERED",
    })
    void judgesAnOrder(int a, int b, int c, Judgement expected) {
        Map<String, Integer> places = new HashMap<>(Map.of("a", a, "b", b, "c", c));
        places.values().removeIf(place -> place == 0);

        assertEquals(expected, Judge.judge(SampleQuiz.order("q"), new Answer(places)));
    }

    @Test
    void everyOrderButTheRightOneIsWrong() {
        long right = Permutations.of(List.of("a", "b", "c")).stream()
                .map(order -> Judge.judge(SampleQuiz.order("q"), Answer.ofOrder(order)))
                .filter(judgement -> judgement == Judgement.RIGHT)
                .count();

        assertEquals(1, right);
    }

    @Test
    void namesTheWrongOptionOfAChoice() {
        assertEquals(
                List.of(new Miss(MissKind.CHOSEN, "d")),
                Judge.misses(SampleQuiz.choice("q", false), Answer.ofChosen(List.of("d"))));
    }

    @Test
    void namesWhatWasChosenWronglyAndWhatWasLeftOut() {
        assertEquals(
                List.of(new Miss(MissKind.LEFT_OUT, "a"), new Miss(MissKind.CHOSEN, "b")),
                Judge.misses(SampleQuiz.severalOf("q"), Answer.ofChosen(List.of("b", "c"))));
    }

    @Test
    void namesTheFirstItemBeforeItsTurn() {
        assertEquals(
                List.of(new Miss(MissKind.TOO_EARLY, "b")),
                Judge.misses(SampleQuiz.order("q"), Answer.ofOrder(List.of("c", "b", "a"))));
    }

    @Test
    void aRightAnswerHasNoMisses() {
        assertEquals(List.of(), Judge.misses(SampleQuiz.choice("q", false), Answer.ofChosen(List.of("b"))));
        assertEquals(List.of(), Judge.misses(SampleQuiz.severalOf("q"), Answer.ofChosen(List.of("c", "a"))));
        assertEquals(List.of(), Judge.misses(SampleQuiz.order("q"), Answer.ofOrder(List.of("c", "a", "b"))));
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : Arrays.asList(text.split(" ", -1));
    }
}
