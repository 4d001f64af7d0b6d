package beltmark.core.problem.bank.spring;

import beltmark.core.problem.LengthRange;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Lengths that read nearly the same on an inch and on a millimetre tape. What is worked out from a difference of two
 * lengths would otherwise hang on the millimetre to which half of the people see them rounded.
 */
final class BothTapes {

    /** How far a sixteenth may lie from a whole millimetre. */
    private static final Length NEAR = Length.ofMillimetres(0.2);

    private BothTapes() {}

    /** {@return the lengths of a range that both tapes tell} */
    static List<Length> of(LengthRange range) {
        return IntStream.range(0, range.steps())
                .mapToObj(range::at)
                .filter(length -> length.isWithin(NEAR, length.roundedTo(Graduation.MILLIMETRE)))
                .toList();
    }
}
