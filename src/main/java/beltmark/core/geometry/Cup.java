package beltmark.core.geometry;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;

/**
 * The belt mark of a belt that hangs cupped: on the return run a troughed belt hangs with its edges below its middle, and
 * flattened its edges rise by the cup: mark = hanging edge + cup. Own derivation; striking the line with the cup taken out
 * is common practice, no published source.
 */
public final class Cup {

    private Cup() {}

    /**
     * Finds the belt mark.
     *
     * @param edge how high the underside of the hanging edge is, above the foot of the tape, not negative
     * @param cup how far the edge rises when the belt is flattened, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Length> beltMark(Length edge, Length cup) {
        Length mark = Limits.notNegative("edge", edge).plus(Limits.notNegative("cup", cup));
        return Solution.of(
                mark, Step.of("cup-taken-out", "edge", edge).with("cup", cup).with("mark", mark));
    }
}
