package beltmark.mastery;

import beltmark.core.mastery.Elo;
import beltmark.core.mastery.HabitState;
import beltmark.core.mastery.KnowledgeTracing;
import beltmark.core.mastery.NextDrill;
import beltmark.core.mastery.NextDrill.Candidate;
import beltmark.core.mastery.NextDrill.Pick;
import beltmark.core.mastery.SkillState;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What practice shows: observations go in, states, habits and the next drill come out. */
public final class Skills {

    /** How many problems ten minutes are enough for. */
    public static final int TEN_MINUTES = 4;

    private final MasteryStore store = new MasteryStore();

    /**
     * Counts a problem: as right when every part was right at the first answer and without help, else as wrong.
     *
     * @param guess how likely somebody is right who does not know, 0..1
     */
    public void observe(Handle handle, long person, String family, double guess, boolean right, LocalDate day) {
        KnowledgeTracing tracing = KnowledgeTracing.ofGuess(guess);
        SkillState before = store.findSkill(handle, person, family).orElse(SkillState.start(tracing));
        store.keep(handle, person, family, before.after(right, day, tracing));
        Elo rating = store.rating(handle, person, family).after(right, Math.min(guess, 0.5));
        store.keep(handle, person, family, rating);
    }

    /** Counts a first answer to a part for the habits. */
    public void answered(Handle handle, FirstAnswer answer, LocalDate day) {
        store.countPart(handle, answer);
        for (String slip : answer.slips().stream().distinct().toList()) {
            HabitState before = store.findHabit(handle, answer, slip).orElse(HabitState.NONE);
            store.keep(handle, answer, slip, before.after(true, false, day));
        }
    }

    /** {@return where a person stands with each family that they have worked} */
    public Map<String, SkillState> states(Handle handle, long person) {
        return store.listSkills(handle, person);
    }

    /** {@return the slips that are a person's habits on a day} */
    public List<Habit> habits(Handle handle, long person, LocalDate day) {
        return store.listHabits(handle, person).stream()
                .filter(habit -> habit.state().isConfirmed(day))
                .toList();
    }

    /**
     * Says what to practise on a day, and why.
     *
     * @param families the families open to the person, in the order in which they are taught
     */
    public List<Pick> drill(Handle handle, long person, List<String> families, LocalDate day) {
        Map<String, SkillState> states = states(handle, person);
        Map<String, Double> difficulties = store.difficulties(handle);
        List<Habit> habits = habits(handle, person, day);
        SkillState start = SkillState.start(KnowledgeTracing.ofGuess(0.1));
        List<Candidate> candidates = families.stream()
                .map(family -> new Candidate(
                        family,
                        states.getOrDefault(family, start),
                        habit(habits, family),
                        difficulties.getOrDefault(family, 0.0)))
                .toList();
        return NextDrill.pick(candidates, day, TEN_MINUTES);
    }

    private static Optional<String> habit(List<Habit> habits, String family) {
        return habits.stream()
                .filter(habit -> habit.family().equals(family))
                .map(habit -> habit.part() + "." + habit.slip())
                .findFirst();
    }
}
