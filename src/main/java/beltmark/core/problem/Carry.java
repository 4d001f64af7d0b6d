package beltmark.core.problem;

import java.util.Optional;

/**
 * Works a part again from a person's own earlier figures, to see whether the answer is right as a carried figure.
 *
 * @param <T> what is answered
 */
@FunctionalInterface
public interface Carry<T> {

    /** {@return the value that follows from the own figures, or empty when none follows} */
    Optional<T> from(OwnFigures own);

    /** {@return the way of a part that hangs on no earlier one} */
    static <T> Carry<T> none() {
        return own -> Optional.empty();
    }
}
