package beltmark.core.qualification;

import static beltmark.core.qualification.SampleRules.PERSON;
import static beltmark.core.qualification.SampleRules.RULES;
import static beltmark.core.qualification.SampleRules.day;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** 10,000 histories from seeds: two judges agree, and what is told later changes no earlier answer. */
class RandomHistoriesTest {

    private static final int HISTORIES = 10_000;
    private static final List<String> IDS = RULES.ids();

    /** One question about one history. */
    private record Question(RandomHistory history, String id, LocalDate on, Instant known) {

        static Question of(int seed) {
            SplittableRandom random = new SplittableRandom(seed * 31L);
            LocalDate on = day(random.nextInt(1_000));
            // knowledge of that day, of an earlier one, of a later one, or all there is
            LocalDate known = on.plusDays(List.of(0, 0, -40, 40, 5_000).get(random.nextInt(5)));
            return new Question(new RandomHistory(seed), IDS.get(random.nextInt(IDS.size())), on, History.end(known));
        }

        Standing judge() {
            Facts facts = new Facts(PERSON, history.facts, history.read(on, known));
            return Judge.standing(RULES, id, facts, on, known);
        }

        /** The same with only what had been told by then, as the book was at that moment. */
        Standing judgeThen() {
            List<Fact> told = history.facts.stream()
                    .filter(fact -> !fact.knownAt().isAfter(known))
                    .toList();
            return Judge.standing(RULES, id, new Facts(PERSON, told, history.read(on, known)), on, known);
        }

        SlowJudge.Answer slow() {
            return new SlowJudge(RULES, PERSON, history.facts, history.activity, on, known).answer(id);
        }
    }

    @Test
    void asOfEqualsRecomputingFromWhatWasKnownThen() {
        Map<Status, Integer> seen = new EnumMap<>(Status.class);
        for (int seed = 0; seed < HISTORIES; seed++) {
            Question question = Question.of(seed);
            Standing standing = question.judge();
            SlowJudge.Answer slow = question.slow();
            String which = "seed " + seed + ", " + question.id() + " on " + question.on() + ": " + standing;
            assertEquals(slow.status(), standing.status(), which);
            assertEquals(slow.lastDay(), standing.findLastDay(), which);
            seen.merge(standing.status(), 1, Integer::sum);
        }
        for (Status status : Status.values()) {
            assertTrue(seen.getOrDefault(status, 0) > HISTORIES / 100, () -> "too few to tell: " + seen);
        }
    }

    @Test
    void whatIsToldLaterNeverChangesAnEarlierAnswer() {
        for (int seed = 0; seed < HISTORIES; seed++) {
            Question question = Question.of(seed);
            assertEquals(question.judgeThen(), question.judge(), "seed " + seed);
        }
    }

    @Test
    void whoIsValidIsSoUpToTheLastDayWhenNothingElseIsTold() {
        for (int seed = 0; seed < HISTORIES; seed++) {
            Question question = Question.of(seed);
            Standing standing = question.judge();
            if (standing.status().isValid()) {
                LocalDate last = standing.findLastDayWithoutWork().orElseThrow();
                // nothing that is dated ahead: as seen from then on, with what was known now of days up to now
                List<Fact> past = question.history().facts.stream()
                        .filter(fact -> !fact.on().isAfter(question.on()))
                        .toList();
                List<Activity> days = question.history().read(question.on(), question.known()).stream()
                        .filter(one -> !one.day().isAfter(question.on()))
                        .toList();
                Facts facts = new Facts(PERSON, past, days);
                assertTrue(isValid(question, facts, last), () -> standing + " on its last day");
                assertTrue(!isValid(question, facts, last.plusDays(1)), () -> standing + " the day after");
            }
        }
    }

    private static boolean isValid(Question question, Facts facts, LocalDate on) {
        return Judge.standing(RULES, question.id(), facts, on, question.known())
                .status()
                .isValid();
    }
}
