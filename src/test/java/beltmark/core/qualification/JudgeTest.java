package beltmark.core.qualification;

import static beltmark.core.qualification.SampleRules.BASIC;
import static beltmark.core.qualification.SampleRules.RULES;
import static beltmark.core.qualification.SampleRules.day;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** A table of cases, each with the reason for what is expected; days and rules are those of {@link SampleRules}. */
class JudgeTest {

    private static final Instant EVERYTHING = Instant.parse("9999-01-01T00:00:00Z");

    @ParameterizedTest(name = "{0} on {2}, {1}: {7}")
    @CsvFileSource(resources = "/core/standings.csv", numLinesToSkip = 2, maxCharsPerColumn = 500)
    void standsWhereTheHistorySays(
            String rule,
            @Nullable String history,
            int asked,
            @Nullable Integer known,
            Status status,
            Reason reason,
            @Nullable Integer lastDay,
            String why) {
        Instant asKnownAt = known == null ? EVERYTHING : History.end(day(known));
        Standing standing =
                Judge.standing(RULES, rule, History.of(history == null ? "" : history), day(asked), asKnownAt);
        assertEquals(status, standing.status(), () -> why + ": " + standing);
        assertEquals(reason, standing.reasons().get(0).reason(), () -> why + ": " + standing);
        assertEquals(Optional.ofNullable(lastDay).map(SampleRules::day), standing.findLastDay(), why);
        assertEquals(reason.step(), standing.next());
    }

    @Test
    void heldPeopleAreToldWhatElseIsMissing() {
        assertEquals(
                List.of(Reason.HELD, Reason.QUIZ_NOT_PASSED, Reason.TOO_FEW_DEMONSTRATIONS),
                reasons(standing(BASIC, "0 drills; 0 hold", 1)));
    }

    @Test
    void everythingMissingIsTold() {
        assertEquals(
                List.of(
                        Reason.TOO_FEW_CLEAN,
                        Reason.TOO_FEW_CLEAN,
                        Reason.QUIZ_NOT_PASSED,
                        Reason.TOO_FEW_DEMONSTRATIONS),
                reasons(standing(BASIC, "", 0)));
    }

    @Test
    void reasonsCarryTheirValues() {
        assertEquals(Map.of("family", "bench", "have", 1, "need", 3), first("0 bench 1", 0));
        assertEquals(Map.of("have", 0, "need", 1), first("0 drills; 0 quiz", 0));
        assertEquals(Map.of("lastDay", day(365)), first("0 drills; 0 quiz; 100 shown", 366));
        assertEquals(
                Map.of("event", "procedure-changed", "since", day(5)),
                first("0 drills; 1 quiz; 2 shown; 5 procedure-changed", 6));
        assertEquals(Map.of("since", day(9)), first("0 drills; 1 quiz; 2 shown; 9 hold", 10));
    }

    @Test
    void whoStaysAwayIsToldUntilWhenThatDoesNoHarm() {
        Standing standing = standing("absence", "0 quiz; 1 shown", 10);
        assertEquals(Optional.of(day(365)), standing.findLastDay());
        assertEquals(Optional.of(day(91)), standing.findLastDayWithoutWork());
    }

    @Test
    void theStatesAreTheFiveOfTheGlossary() {
        assertEquals(
                List.of("in-training", "cleared", "due-soon", "lapsed", "held"),
                Stream.of(Status.values()).map(Status::id).toList());
        assertTrue(Status.DUE_SOON.isValid());
    }

    private static Map<String, Object> first(String history, int asked) {
        return standing(BASIC, history, asked).reasons().get(0).values();
    }

    private static List<Reason> reasons(Standing standing) {
        return standing.reasons().stream().map(Finding::reason).toList();
    }

    private static Standing standing(String rule, String history, int asked) {
        LocalDate on = day(asked);
        return Judge.standing(RULES, rule, History.of(history), on, EVERYTHING);
    }
}
