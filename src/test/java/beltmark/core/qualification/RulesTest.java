package beltmark.core.qualification;

import static beltmark.core.qualification.SampleRules.RULES;
import static beltmark.core.qualification.SampleRules.day;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RulesTest {

    @ParameterizedTest
    @CsvSource({"-1, ", "0, 1", "99, 1", "100, 2", "5000, 2"})
    void theVersionOfTheDayIsValid(int on, @org.jspecify.annotations.Nullable Integer version) {
        assertEquals(
                Optional.ofNullable(version),
                RULES.findValid("versions", day(on)).map(QualificationRule::version));
    }

    @Test
    void aLaterVersionMustBeginLater() {
        assertThrows(IllegalArgumentException.class, () -> Rules.of(List.of(rule("a", 1, 5), rule("a", 2, 5))));
        assertThrows(IllegalArgumentException.class, () -> Rules.of(List.of(rule("a", 2, 5), rule("a", 1, 9))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "b", "c"})
    void aPrerequisiteIsKnownAndDoesNotLeadBack(String lastNeeds) {
        List<QualificationRule> circle =
                List.of(rule("a", 1, 0, "b"), rule("b", 1, 0, "c"), rule("c", 1, 0, lastNeeds));
        assertThrows(IllegalArgumentException.class, () -> Rules.of(circle));
        assertThrows(IllegalArgumentException.class, () -> Rules.of(List.of(rule("a", 1, 0, "moon"))));
    }

    @ParameterizedTest
    @CsvSource({"0, 30", "365, -1", "30, 30"})
    void aRuleThatCannotBeMeantIsRefused(int quizDays, int dueSoonDays) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new QualificationRule(
                        "r",
                        1,
                        day(0),
                        Optional.empty(),
                        List.of(),
                        new Needs(
                                List.of(),
                                Optional.of(new Needs.Pass("lockout", quizDays)),
                                List.of(),
                                Optional.empty(),
                                List.of()),
                        List.of(),
                        dueSoonDays));
    }

    @Test
    void whatWouldNeverRunOutIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Needs(
                        List.of(new CleanNeed("bench", 1)), Optional.empty(), List.of(), Optional.empty(), List.of()));
    }

    @Test
    void onlyALongAbsenceCountsDaysAndItNeverHolds() {
        assertThrows(IllegalArgumentException.class, () -> Consequence.absence(27, Set.of(Needs.Kind.QUIZ)));
        assertThrows(IllegalArgumentException.class, () -> Consequence.hold(EventKind.LONG_ABSENCE));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Consequence(EventKind.JOB_CHANGED, Set.of(Needs.Kind.QUIZ), 40));
        assertThrows(IllegalArgumentException.class, () -> Consequence.lapse(EventKind.JOB_CHANGED, Set.of()));
        assertTrue(Consequence.hold(EventKind.JOB_CHANGED).holds());
    }

    private static QualificationRule rule(String id, int version, int from, String... prerequisites) {
        Optional<Needs.Pass> quiz = Optional.of(new Needs.Pass("lockout", 365));
        Needs needs = new Needs(List.of(), quiz, List.of(), Optional.empty(), List.of(prerequisites));
        return new QualificationRule(id, version, day(from), Optional.empty(), List.of(), needs, List.of(), 30);
    }
}
