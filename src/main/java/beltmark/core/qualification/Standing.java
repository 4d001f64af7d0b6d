package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a person stands with one qualification on one date.
 *
 * @param status the status
 * @param reasons why, the one to be dealt with first in front; never empty
 * @param lastDay the last day on which every need is or was met; null when they never all were. A long absence that has
 *     not begun is counted only when the status is due soon because of it
 * @param quietUntil for who is valid under a rule about long absence, the last day before it if nothing more is recorded
 */
public record Standing(
        Status status,
        List<Finding> reasons,
        @Nullable LocalDate lastDay,
        @Nullable LocalDate quietUntil) {

    public Standing {
        reasons = List.copyOf(reasons);
    }

    /** {@return the last day on which every need is or was met, if they ever all were} */
    public Optional<LocalDate> findLastDay() {
        return Optional.ofNullable(lastDay);
    }

    /** {@return the last day of who is valid, if nothing at all is recorded from now on} */
    public Optional<LocalDate> findLastDayWithoutWork() {
        return quietUntil != null && lastDay != null && quietUntil.isBefore(lastDay)
                ? Optional.of(quietUntil)
                : findLastDay();
    }

    /** {@return what to do next} */
    public NextStep next() {
        return reasons.get(0).reason().step();
    }
}
