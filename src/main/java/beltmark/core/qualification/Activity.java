package beltmark.core.qualification;

import java.time.Instant;
import java.time.LocalDate;

/**
 * A day on which a person did something that is on record.
 *
 * @param day the day
 * @param knownAt when it was recorded
 * @param gapDays how many days before it lies the last such day that was known then; 0 when there was none
 */
public record Activity(LocalDate day, Instant knownAt, int gapDays) {

    public Activity {
        if (gapDays < 0) {
            throw new IllegalArgumentException("a gap of " + gapDays + " days");
        }
    }
}
