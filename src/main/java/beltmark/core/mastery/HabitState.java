package beltmark.core.mastery;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How often one person's first answers came from one slip, of the times they could have. Every drawn problem tells its
 * slips apart, so every first answer to a part that knows the slip is a chance. A diagnosis ages: bugs come and go.
 *
 * @param matches how many came from the slip
 * @param chances how many could have
 * @param rightSince right answers to such parts since the last match
 * @param lastOn the day of the last match; null when there is none
 */
public record HabitState(
        int matches, int chances, int rightSince, @Nullable LocalDate lastOn) {

    /** Nothing answered yet. */
    public static final HabitState NONE = new HabitState(0, 0, 0, null);

    private static final int FEWEST_MATCHES = 2;
    private static final double LEAST_SHARE = 0.6;
    private static final int RIGHTS_THAT_END_IT = 3;
    private static final int DAYS_THAT_END_IT = 30;

    /** {@return the state after a first answer to a part that knows the slip} */
    public HabitState after(boolean matched, boolean right, LocalDate day) {
        HabitState counted = isOver(day) ? NONE : this;
        return new HabitState(
                counted.matches + (matched ? 1 : 0),
                counted.chances + 1,
                matched ? 0 : counted.rightSince + (right ? 1 : 0),
                matched ? day : counted.lastOn);
    }

    private boolean isOver(LocalDate day) {
        return lastOn != null
                && (rightSince >= RIGHTS_THAT_END_IT
                        || lastOn.plusDays(DAYS_THAT_END_IT).isBefore(day));
    }

    /** {@return whether it is a habit on a day: two matches or more, on three of five chances or more, not yet outgrown} */
    public boolean isConfirmed(LocalDate day) {
        return matches >= FEWEST_MATCHES && matches >= LEAST_SHARE * chances && !isOver(day);
    }
}
