package beltmark.core.mastery;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What one person's first answers to the problems of one family show. Each problem counts once: as right when every part
 * was right at the first answer and without help, else as wrong.
 *
 * @param known the chance that the skill is known, 0..1
 * @param answers how many problems it rests on
 * @param inARow how many of the last ones were right, without a wrong one between
 * @param rowSince the day of the first of those; null when there is none
 * @param level the step of the ladder
 * @param dueOn when it is due again; null before the first answer
 * @param masteredOn the day on which it was first mastered; null before
 */
public record SkillState(
        double known,
        int answers,
        int inARow,
        @Nullable LocalDate rowSince,
        int level,
        @Nullable LocalDate dueOn,
        @Nullable LocalDate masteredOn) {

    /** How many right ones in a row it takes. */
    public static final int ROW = 5;

    /** On how many different days at least they fall: the first and the last of them are not the same day. */
    public static final int DAYS = 2;

    /** {@return the state before the first answer} */
    public static SkillState start(KnowledgeTracing tracing) {
        return new SkillState(tracing.known(), 0, 0, null, Ladder.START, null, null);
    }

    /** {@return the state after one more problem} */
    public SkillState after(boolean right, LocalDate day, KnowledgeTracing tracing) {
        int row = right ? inARow + 1 : 0;
        LocalDate since = !right ? null : rowSince == null ? day : rowSince;
        int next = Ladder.after(level, right);
        boolean mastered = row >= ROW && since != null && day.isAfter(since);
        return new SkillState(
                tracing.after(known, right),
                answers + 1,
                row,
                since,
                next,
                day.plusDays(Ladder.gapDays(next)),
                masteredOn == null && mastered ? day : masteredOn);
    }

    /** {@return whether the last answers meet the rule: five right in a row, unaided, over at least two days} */
    public boolean isMastered() {
        return masteredOn != null && inARow > 0;
    }

    /** {@return whether a review is due on a day} */
    public boolean isDue(LocalDate day) {
        return dueOn != null && !dueOn.isAfter(day);
    }
}
