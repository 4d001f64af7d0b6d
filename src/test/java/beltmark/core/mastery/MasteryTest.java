package beltmark.core.mastery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When a skill counts as mastered, and how often that rule is wrong. */
class MasteryTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final KnowledgeTracing TRACING = KnowledgeTracing.ofGuess(0.1);

    @Test
    void fiveRightOnOneDayAreNotEnough() {
        assertFalse(rights(SkillState.start(TRACING), 5, MONDAY).isMastered());
    }

    @Test
    void fiveRightOverTwoDaysMasterASkill() {
        SkillState four = rights(SkillState.start(TRACING), 4, MONDAY);
        SkillState five = four.after(true, MONDAY.plusDays(1), TRACING);
        assertFalse(four.isMastered());
        assertTrue(five.isMastered());
        assertEquals(MONDAY.plusDays(1), five.masteredOn());
    }

    @Test
    void aWrongOneBeginsTheRowAnew() {
        SkillState state = rights(SkillState.start(TRACING), 4, MONDAY)
                .after(false, MONDAY.plusDays(1), TRACING)
                .after(true, MONDAY.plusDays(2), TRACING);
        assertEquals(1, state.inARow());
        assertFalse(state.isMastered());
    }

    @Test
    void whatWasMasteredAndIsThenWrongHasToBeShownAgain() {
        SkillState mastered = rights(SkillState.start(TRACING), 4, MONDAY).after(true, MONDAY.plusDays(1), TRACING);
        assertFalse(mastered.after(false, MONDAY.plusDays(20), TRACING).isMastered());
    }

    /** Computed exactly for ten answers in published work notes on mastery rules: 11, 42 and 89 percent. */
    @ParameterizedTest
    @CsvSource({"0.5, 5, 0.109", "0.7, 5, 0.420", "0.9, 5, 0.886", "0.5, 3, 0.508", "0.7, 4, 0.632"})
    void theChanceToBeDeclaredWithinTenAnswersIsKnown(double chance, int row, double expected) {
        assertEquals(expected, MasteryRule.declares(chance, row, 10), 0.006);
    }

    @ParameterizedTest
    @CsvSource({"0.5", "0.7", "0.9"})
    void theExactChanceAgreesWithASimulation(double chance) {
        SplittableRandom random = new SplittableRandom(11);
        int people = 40_000;
        int declared = 0;
        for (int i = 0; i < people; i++) {
            SkillState state = SkillState.start(TRACING);
            for (int answer = 0; answer < 10 && state.masteredOn() == null; answer++) {
                state = state.after(random.nextDouble() < chance, MONDAY.plusDays(answer), TRACING);
            }
            declared += state.masteredOn() == null ? 0 : 1;
        }
        assertEquals(MasteryRule.declares(chance, 5, 10), declared / (double) people, 0.01);
    }

    @Test
    void twoMatchesOfTwoChancesAreAHabit() {
        HabitState habit = HabitState.NONE.after(true, false, MONDAY).after(true, false, MONDAY);
        assertTrue(habit.isConfirmed(MONDAY));
    }

    @Test
    void twoMatchesOfFourChancesAreNone() {
        HabitState habit = HabitState.NONE
                .after(true, false, MONDAY)
                .after(false, false, MONDAY)
                .after(false, false, MONDAY)
                .after(true, false, MONDAY);
        assertFalse(habit.isConfirmed(MONDAY));
    }

    @Test
    void aHabitIsOutgrownByThreeRightsOrThirtyDays() {
        HabitState habit = HabitState.NONE.after(true, false, MONDAY).after(true, false, MONDAY);
        HabitState outgrown =
                habit.after(false, true, MONDAY).after(false, true, MONDAY).after(false, true, MONDAY);
        assertFalse(outgrown.isConfirmed(MONDAY));
        assertTrue(habit.isConfirmed(MONDAY.plusDays(30)));
        assertFalse(habit.isConfirmed(MONDAY.plusDays(31)));
    }

    private static SkillState rights(SkillState from, int count, LocalDate day) {
        SkillState state = from;
        for (int i = 0; i < count; i++) {
            state = state.after(true, day, TRACING);
        }
        return state;
    }
}
