package beltmark.core.mastery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.core.mastery.NextDrill.Candidate;
import beltmark.core.mastery.NextDrill.Pick;
import beltmark.core.mastery.NextDrill.Why;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is picked for ten minutes of practice, and why. */
class NextDrillTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 20);
    private static final KnowledgeTracing TRACING = KnowledgeTracing.ofGuess(0.1);
    private static final SkillState START = SkillState.start(TRACING);

    @Test
    void aNewPersonBeginsInTheOrderOfTheJob() {
        List<Pick> picks = NextDrill.pick(List.of(fresh("tape"), fresh("marks"), fresh("springs")), TODAY, 2);
        assertEquals(List.of("tape", "marks"), picks.stream().map(Pick::family).toList());
        assertEquals(Why.NEW, picks.get(0).why());
    }

    @Test
    void whatIsDueTakesAtMostHalfThePlaces() {
        List<Pick> picks =
                NextDrill.pick(List.of(due("a", 3), due("b", 9), due("c", 5), fresh("d"), fresh("e")), TODAY, 4);
        assertEquals(
                List.of("b", "c", "a", "d"), picks.stream().map(Pick::family).toList());
    }

    @Test
    void aHabitComesFirst() {
        Candidate habit = new Candidate("h", START, Optional.of("mount-mark.measured-down"), 0);
        List<Pick> picks = NextDrill.pick(List.of(due("a", 3), habit), TODAY, 4);
        assertEquals(new Pick("h", Why.HABIT, habit), picks.get(0));
    }

    private static Candidate fresh(String family) {
        return new Candidate(family, START, Optional.empty(), 0);
    }

    /** Begun with one wrong answer, and due for some days. */
    private static Candidate due(String family, int days) {
        SkillState state = START.after(false, TODAY.minusDays(7 + days), TRACING);
        return new Candidate(family, state, Optional.empty(), 0);
    }
}
