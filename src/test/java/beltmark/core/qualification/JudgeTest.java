package beltmark.core.qualification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days are counted from the first of January 2026, which is day 0. */
class JudgeTest {

    private static final LocalDate DAY_0 = LocalDate.of(2026, 1, 1);
    private static final long PERSON = 7;
    private static final long SUPERVISOR = 8;
    private static final String CARD = "test-card";

    private static final QualificationRule RULE = rule(1);

    @ParameterizedTest
    @CsvSource({
        // bench, drills, quiz days, demonstration days, asked -> status, first reason, last day
        "0, 0, '', '', 0, IN_TRAINING, TOO_FEW_CLEAN, ",
        "2, 2, 1, 2, 3, IN_TRAINING, TOO_FEW_CLEAN, ",
        "3, 1, 1, 2, 3, IN_TRAINING, TOO_FEW_CLEAN, ",
        "3, 2, '', '', 0, IN_TRAINING, QUIZ_NOT_PASSED, ",
        "3, 2, '', 2, 3, IN_TRAINING, QUIZ_NOT_PASSED, ",
        "3, 2, 1, '', 3, IN_TRAINING, TOO_FEW_DEMONSTRATIONS, ",
        // the day on which the last need is met counts, the day before not
        "3, 2, 1, 2, 1, IN_TRAINING, TOO_FEW_DEMONSTRATIONS, ",
        "3, 2, 1, 2, 2, CLEARED, ALL_MET, 366",
        "3, 2, 5, 2, 4, IN_TRAINING, QUIZ_NOT_PASSED, ",
        "3, 2, 5, 2, 5, CLEARED, ALL_MET, 370",
        "9, 9, 1, 2, 2, CLEARED, ALL_MET, 366",
        // the quiz counts for 365 days; due soon from 30 days before the last one
        "3, 2, 0, 100, 334, CLEARED, ALL_MET, 365",
        "3, 2, 0, 100, 335, DUE_SOON, QUIZ_RUNS_OUT, 365",
        "3, 2, 0, 100, 365, DUE_SOON, QUIZ_RUNS_OUT, 365",
        "3, 2, 0, 100, 366, LAPSED, QUIZ_RAN_OUT, 365",
        // a demonstration counts for 400 days
        "3, 2, 0 300, 100, 469, CLEARED, ALL_MET, 500",
        "3, 2, 0 300, 100, 470, DUE_SOON, DEMONSTRATION_RUNS_OUT, 500",
        "3, 2, 0 300, 100, 500, DUE_SOON, DEMONSTRATION_RUNS_OUT, 500",
        "3, 2, 0 300, 100, 501, LAPSED, DEMONSTRATION_RAN_OUT, 500",
        // both run out: the earlier one is named first, and when both have run out the quiz is
        "3, 2, 0, 0, 340, DUE_SOON, QUIZ_RUNS_OUT, 365",
        "3, 2, 50, 0, 390, DUE_SOON, DEMONSTRATION_RUNS_OUT, 400",
        "3, 2, 0, 0, 401, LAPSED, QUIZ_RAN_OUT, 365",
        "3, 2, 100, 0, 401, LAPSED, DEMONSTRATION_RAN_OUT, 400",
        // renewed: a later pass or demonstration takes over, in whatever order they are told
        "3, 2, 0 365, 100, 366, CLEARED, ALL_MET, 500",
        "3, 2, 365 0, 100, 366, CLEARED, ALL_MET, 500",
        "3, 2, 0 370, 100, 368, LAPSED, QUIZ_RAN_OUT, 365",
        "3, 2, 0 370, 100, 370, CLEARED, ALL_MET, 500",
        "3, 2, 0 300, 0 400, 401, CLEARED, ALL_MET, 665",
        // never all at once: in training, however old
        "3, 2, 0, 366, 366, IN_TRAINING, QUIZ_RAN_OUT, ",
        "3, 2, 0, 365, 365, DUE_SOON, QUIZ_RUNS_OUT, 365",
        "3, 2, 401, 0, 401, IN_TRAINING, DEMONSTRATION_RAN_OUT, ",
        "3, 2, 0 800, 366, 900, IN_TRAINING, DEMONSTRATION_RAN_OUT, ",
        // what lies after the day asked about is not known yet
        "3, 2, 0 200, 100 300, 150, CLEARED, ALL_MET, 365",
        "3, 2, 0 200, 160, 150, IN_TRAINING, TOO_FEW_DEMONSTRATIONS, "
    })
    void standsWhereTheNeedsSay(
            int bench,
            int drills,
            String quiz,
            String shown,
            int asked,
            Status status,
            Reason reason,
            @Nullable Integer lastDay) {
        Standing standing = Judge.standing(RULE, facts(bench, drills, quiz, shown), day(asked));
        assertEquals(status, standing.status(), standing::toString);
        assertEquals(reason, standing.reasons().get(0).reason(), standing::toString);
        assertEquals(Optional.ofNullable(lastDay).map(JudgeTest::day), standing.findLastDay());
        assertEquals(reason.step(), standing.next());
    }

    @ParameterizedTest
    @CsvSource({
        // hold from, to, asked -> status; all needs are met from day 2 to day 366
        "10, , 9, CLEARED",
        "10, , 10, HELD",
        "10, , 500, HELD",
        "10, 20, 20, HELD",
        "10, 20, 21, CLEARED",
        "1, 1, 1, HELD"
    })
    void beingHeldGoesBeforeEverythingFromItsFirstToItsLastDay(
            int from, @Nullable Integer to, int asked, Status status) {
        Facts free = facts(3, 2, "1", "2");
        Facts.Hold hold = new Facts.Hold(day(from), Optional.ofNullable(to).map(JudgeTest::day));
        Facts held = new Facts(PERSON, free.clean(), free.quizPassed(), free.demonstrations(), List.of(hold));
        assertEquals(status, Judge.standing(RULE, held, day(asked)).status());
    }

    @Test
    void heldPeopleAreToldWhatElseIsMissing() {
        Facts.Hold hold = new Facts.Hold(day(0), Optional.empty());
        Facts held = new Facts(PERSON, Map.of("bench", 3, "mount-marks", 2), List.of(), List.of(), List.of(hold));
        List<Reason> reasons = Judge.standing(RULE, held, day(1)).reasons().stream()
                .map(Finding::reason)
                .toList();
        assertEquals(List.of(Reason.HELD, Reason.QUIZ_NOT_PASSED, Reason.TOO_FEW_DEMONSTRATIONS), reasons);
    }

    @ParameterizedTest
    @CsvSource({"test-card, 8, CLEARED", "test-card, 7, IN_TRAINING", "other-card, 8, IN_TRAINING"})
    void onlyDemonstrationsOnThatCardSignedByAnotherPersonCount(String card, long assessor, Status status) {
        Facts facts = new Facts(
                PERSON,
                Map.of("bench", 3, "mount-marks", 2),
                List.of(day(1)),
                List.of(new Facts.Demonstration(day(2), card, assessor)),
                List.of());
        assertEquals(status, Judge.standing(RULE, facts, day(3)).status());
    }

    @ParameterizedTest
    @CsvSource({
        // two are needed: shown on, asked -> status, how many of them count
        "'10', 10, IN_TRAINING, 1",
        "'10 20', 19, IN_TRAINING, 1",
        "'10 20', 20, CLEARED, 2",
        "'10 10', 10, CLEARED, 2",
        "'10 20', 366, DUE_SOON, 2",
        "'10 20 200', 390, LAPSED, 2",
        "'0 401', 401, IN_TRAINING, 1",
        "'0 360', 366, DUE_SOON, 2"
    })
    void whereTwoDemonstrationsAreNeededBothMustCountThatDay(String shown, int asked, Status status, int counting) {
        Facts facts = facts(3, 2, "1", shown);
        Standing standing = Judge.standing(rule(2), facts, day(asked));
        assertEquals(status, standing.status(), standing::toString);
        standing.reasons().stream()
                .filter(finding -> finding.reason() == Reason.TOO_FEW_DEMONSTRATIONS)
                .forEach(finding -> assertEquals(counting, finding.values().get("have")));
    }

    @Test
    void reasonsCarryTheirValues() {
        Finding first =
                Judge.standing(RULE, facts(1, 2, "", ""), day(0)).reasons().get(0);
        assertEquals(Map.of("family", "bench", "have", 1, "need", 3), first.values());
    }

    @Test
    void aFactOfALaterDayNeverChangesAnEarlierAnswer() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 2_000; i++) {
            List<Integer> quiz =
                    random.ints(random.nextInt(4), 0, 1_500).boxed().toList();
            List<Integer> shown =
                    random.ints(random.nextInt(4), 0, 1_500).boxed().toList();
            int asked = random.nextInt(1_500);
            Standing all = Judge.standing(RULE, facts(quiz, shown), day(asked));
            Standing known = Judge.standing(RULE, facts(upTo(asked, quiz), upTo(asked, shown)), day(asked));
            assertEquals(known, all);
        }
    }

    @Test
    void validExactlyUpToTheLastDayWhenNothingElseHappens() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 2_000; i++) {
            Facts facts = facts(List.of(random.nextInt(900)), List.of(random.nextInt(900)));
            LocalDate asked = day(random.nextInt(1_500));
            Standing standing = Judge.standing(RULE, facts, asked);
            boolean upToLast =
                    standing.findLastDay().map(last -> !asked.isAfter(last)).orElse(false);
            assertEquals(upToLast, standing.status().isValid(), standing::toString);
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 400, 30", "365, 0, 400, 30", "365, 1, 0, 30", "365, 1, 400, -1", "30, 1, 400, 30"})
    void aRuleThatCannotBeMeantIsRefused(int quizDays, int demonstrations, int lifeDays, int dueSoonDays) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new QualificationRule(
                        "r", 1, CARD, List.of(), "lockout", quizDays, demonstrations, lifeDays, dueSoonDays));
    }

    @Test
    void theStatesAreTheFiveOfTheGlossary() {
        assertEquals(
                List.of("in-training", "cleared", "due-soon", "lapsed", "held"),
                Stream.of(Status.values()).map(Status::id).toList());
        assertTrue(Status.DUE_SOON.isValid());
    }

    private static List<Integer> upTo(int last, List<Integer> days) {
        return days.stream().filter(day -> day <= last).toList();
    }

    private static QualificationRule rule(int demonstrations) {
        return new QualificationRule(
                "test-rule",
                1,
                CARD,
                List.of(new CleanNeed("bench", 3), new CleanNeed("mount-marks", 2)),
                "lockout",
                365,
                demonstrations,
                demonstrations == 1 ? 400 : 370,
                30);
    }

    private static Facts facts(int bench, int drills, String quiz, String shown) {
        Facts some = facts(days(quiz), days(shown));
        return new Facts(
                PERSON,
                Map.of("bench", bench, "mount-marks", drills),
                some.quizPassed(),
                some.demonstrations(),
                List.of());
    }

    private static Facts facts(List<Integer> quiz, List<Integer> shown) {
        return new Facts(
                PERSON,
                Map.of("bench", 3, "mount-marks", 2),
                quiz.stream().map(JudgeTest::day).toList(),
                shown.stream()
                        .map(on -> new Facts.Demonstration(day(on), CARD, SUPERVISOR))
                        .toList(),
                List.of());
    }

    private static List<Integer> days(String numbers) {
        List<Integer> days = new ArrayList<>();
        for (String number : numbers.split(" ", -1)) {
            if (!number.isEmpty()) {
                days.add(Integer.valueOf(number));
            }
        }
        return days;
    }

    private static LocalDate day(int number) {
        return DAY_0.plusDays(number);
    }
}
