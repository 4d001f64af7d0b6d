package beltmark.core.lockout;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuestionTest {

    @ParameterizedTest
    @CsvSource({
        "CHOICE, a, a",
        "CHOICE, a b, a b",
        "CHOICE, a b, z",
        "CHOICE, a a b, a",
        "SEVERAL_OF, a b c, ''",
        "SEVERAL_OF, a b c, a a",
        "PUT_IN_ORDER, a b, b a",
        "PUT_IN_ORDER, a b c, a b",
    })
    void refusesAKeyThatDoesNotFit(QuestionKind kind, String options, String right) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Question("q", kind, false, words(options), words(right), SampleQuiz.SOURCE));
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : Arrays.asList(text.split(" ", -1));
    }
}
