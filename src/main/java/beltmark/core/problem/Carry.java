package beltmark.core.problem;

import beltmark.core.units.Length;
import java.util.Optional;

/** Works a part again from a person's own earlier figures, to see whether the answer is right as a carried figure. */
@FunctionalInterface
public interface Carry {

    /** For a part that hangs on no earlier one. */
    Carry NONE = own -> Optional.empty();

    /** {@return the value that follows from the own figures, or empty when none follows} */
    Optional<Length> from(OwnFigures own);
}
