package beltmark.trainee;

import beltmark.core.mastery.KnowledgeTracing;
import beltmark.core.mastery.Ladder;
import beltmark.core.mastery.SkillState;
import java.time.LocalDate;
import java.util.SplittableRandom;

/**
 * One family in the mind of one learner. Who does not know it is right with the chance of guessing and learns it from a
 * problem with a chance of their own, 0.05 to 0.25; who knows it is right with 0.9 and forgets as the ladder says:
 * the chance to have kept it is 0.8 over the gap that its level allows.
 */
final class Learner {

    private static final double LEAST_LEARNT = 0.05;
    private static final double MOST_LEARNT = 0.25;

    private final KnowledgeTracing tracing;
    private final double learns;
    private SkillState state;
    private boolean knows;
    private LocalDate workedOn;

    Learner(KnowledgeTracing tracing, LocalDate start, SplittableRandom random) {
        this.tracing = tracing;
        this.learns = LEAST_LEARNT + (MOST_LEARNT - LEAST_LEARNT) * random.nextDouble();
        this.state = SkillState.start(tracing);
        this.knows = random.nextDouble() < tracing.known();
        this.workedOn = start;
    }

    void work(LocalDate day, SplittableRandom random) {
        double kept = Ladder.recall(state.level(), day.toEpochDay() - workedOn.toEpochDay());
        knows = knows && random.nextDouble() < kept;
        boolean right = random.nextDouble() < (knows ? 1 - tracing.slips() : tracing.guesses());
        state = state.after(right, day, tracing);
        knows = knows || random.nextDouble() < learns;
        workedOn = day;
    }

    SkillState state() {
        return state;
    }

    boolean hasMastered() {
        return state.masteredOn() != null;
    }
}
