package beltmark.people;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A time that somebody is in a crew.
 *
 * @param personId who
 * @param crew which
 * @param from the first day; {@link #SINCE_EVER} when nobody wrote down when it began
 * @param to the first day no longer, null while it lasts
 */
public record Membership(
        long personId, Crew crew, LocalDate from, @Nullable LocalDate to) {

    /** Stands for a beginning that is not known. */
    public static final LocalDate SINCE_EVER = LocalDate.of(1, 1, 1);

    /** {@return the first day, empty when it is not known} */
    public Optional<LocalDate> findFrom() {
        return from.equals(SINCE_EVER) ? Optional.empty() : Optional.of(from);
    }

    /** {@return the first day no longer, empty while it lasts} */
    public Optional<LocalDate> findTo() {
        return Optional.ofNullable(to);
    }
}
