package beltmark.core.geometry;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.PreciseLength;

/**
 * How far two pairs of marks are out of square, from the diagonals between them: dx = (d1^2 - d2^2)/(4 A) for marks a
 * length A apart along the belt on both sides. Own derivation; the marks are as far apart across as A and the diagonals
 * leave room for, sqrt{(d1^2 + d2^2)/2 - A^2 - dx^2}.
 *
 * @param outOfSquare how far the marks of one side are ahead dx; its sign is that of d1 - d2
 * @param across how far apart the sides are
 */
public record Diagonals(PreciseLength outOfSquare, PreciseLength across) {

    /**
     * Finds how far the marks are out of square.
     *
     * @param first the one diagonal d1, above 0
     * @param second the other diagonal d2, above 0
     * @param along the marked length along the belt A, above 0
     * @throws Refused DIAGONALS_IMPOSSIBLE when no marks have them, OUT_OF_RANGE
     */
    public static Solution<Diagonals> of(Length first, Length second, Length along) {
        double d1 = Limits.positive("firstDiagonal", first).millimetres();
        double d2 = Limits.positive("secondDiagonal", second).millimetres();
        double a = Limits.positive("along", along).millimetres();
        double out = (d1 - d2) * (d1 + d2) / (4 * a);
        double across = (d1 * d1 + d2 * d2) / 2 - a * a - out * out;
        if (!(across > 0)) {
            throw Refused.because(Refusal.DIAGONALS_IMPOSSIBLE)
                    .with("first", first)
                    .with("second", second)
                    .with("along", along);
        }
        Diagonals diagonals = new Diagonals(new PreciseLength(out), new PreciseLength(Math.sqrt(across)));
        return Solution.of(
                diagonals,
                Step.of("out-of-square", "first", first)
                        .with("second", second)
                        .with("along", along)
                        .with("outOfSquare", diagonals.outOfSquare));
    }
}
