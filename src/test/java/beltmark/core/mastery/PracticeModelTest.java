package beltmark.core.mastery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The models of practice against values computed by a second program (R 4.2.2) for Corbett and Anderson's knowledge tracing,
 * Elo ratings and the ladder; {@code bkt.csv}, {@code elo.csv}, {@code ladder.csv}.
 */
class PracticeModelTest {

    private static final double CLOSE = 1e-9;

    @ParameterizedTest
    @CsvFileSource(resources = "/mastery/bkt.csv", numLinesToSkip = 1)
    void tracesKnowledge(
            String sequence, int step, Integer right, double prior, Double given, double learned, double next) {
        if (right == null || !(sequence.startsWith("num_") || sequence.startsWith("mc4_"))) {
            return; // other sequences try parameters that this model refuses
        }
        double guess = sequence.startsWith("mc4_") ? 0.25 : 0.05;
        KnowledgeTracing tracing = new KnowledgeTracing(0.3, 0.15, 0.1, guess);
        assertEquals(given, tracing.given(prior, right == 1), CLOSE, sequence + step);
        assertEquals(learned, tracing.after(prior, right == 1), CLOSE);
        assertEquals(next, tracing.rightNext(learned), CLOSE);
    }

    @Test
    void refusesAModelInWhichARightAnswerLowersTheChance() {
        assertThrows(IllegalArgumentException.class, () -> new KnowledgeTracing(0.5, 0.1, 0.5, 0.6));
    }

    @Test
    void neverReachesCertainty() {
        KnowledgeTracing tracing = KnowledgeTracing.ofGuess(0.1);
        double chance = 0.2;
        for (int i = 0; i < 1_000; i++) {
            chance = tracing.after(chance, true);
        }
        assertEquals(0.999_999, chance, CLOSE);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5", "0.25, 0.375"})
    void ratesTheFirstAnswer(double guess, double expected) {
        Elo rated = new Elo(0, 0, 0, 0).after(true, guess);
        assertEquals(expected, rated.skill(), CLOSE);
        assertEquals(-expected, rated.difficulty(), CLOSE);
    }

    /** Every row of the table names the chance before and both ratings after, so the ratings before follow from it. */
    @ParameterizedTest
    @CsvFileSource(resources = "/mastery/elo.csv", numLinesToSkip = 1)
    void ratesEveryAnswerOfTheTable(
            String config,
            int step,
            String learner,
            String item,
            int right,
            double chance,
            double learnerStep,
            double itemStep,
            double skillAfter,
            double difficultyAfter) {
        if (config.startsWith("constK")) {
            return; // steps that never get smaller are not in use
        }
        double guess = config.startsWith("choice4") ? 0.25 : 0;
        int answers = (int) Math.round((1 / learnerStep - 1) / 0.05);
        int asked = (int) Math.round((1 / itemStep - 1) / 0.05);
        Elo before = new Elo(
                skillAfter - learnerStep * (right - chance),
                answers,
                difficultyAfter + itemStep * (right - chance),
                asked);
        assertEquals(chance, before.right(guess), 1e-8);
        assertEquals(skillAfter, before.after(right == 1, guess).skill(), 1e-8);
        assertEquals(difficultyAfter, before.after(right == 1, guess).difficulty(), 1e-8);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/mastery/ladder.csv", numLinesToSkip = 1)
    void climbsTheLadder(
            String sequence,
            int step,
            int right,
            int level,
            int gap,
            double halfLife,
            double due,
            double half,
            double year) {
        assertEquals(gap, Ladder.gapDays(level), sequence + step);
        assertEquals(halfLife, Ladder.halfLifeDays(level), 1e-6);
        assertEquals(due, Ladder.recall(level, gap), CLOSE);
        assertEquals(half, Ladder.recall(level, 182), 1e-8);
        assertEquals(year, Ladder.recall(level, 365), 1e-8);
    }

    @ParameterizedTest
    @CsvSource({"-1, true, 0", "0, true, 1", "4, true, 4", "4, false, 2", "1, false, 0", "-1, false, 0"})
    void oneStepUpOrTwoDown(int level, boolean right, int after) {
        assertEquals(after, Ladder.after(level, right));
    }
}
