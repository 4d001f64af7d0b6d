package beltmark.core.geometry;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Angle;
import beltmark.core.units.Limits;

/**
 * How far a blade leans from plumb when it stands at an angle alpha to a belt that slopes by theta: alpha + theta - 90
 * degrees. The angle to the belt is taken on the side the belt comes from. Own derivation.
 */
public final class BladeLean {

    private static final double SQUARE = 90;
    private static final double STRAIGHT = 180;
    private static final double STEEPEST = 89;

    private BladeLean() {}

    /**
     * Finds the lean.
     *
     * @param toBelt between the blade and the belt, on the side the belt comes from, alpha, 0..180 degrees
     * @param slope of the belt theta, -89..89 degrees; positive where it runs up along its travel
     * @return from plumb; positive where the tip leans against the travel, negative where it leans with it
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Angle> fromPlumb(Angle toBelt, Angle slope) {
        Limits.within("angle", toBelt, 0, STRAIGHT);
        Limits.within("slope", slope, -STEEPEST, STEEPEST);
        Angle lean = new Angle(toBelt.degrees() + slope.degrees() - SQUARE);
        return Solution.of(
                lean,
                Step.of("blade-from-plumb", "toBelt", toBelt)
                        .with("slope", slope)
                        .with("lean", new Angle(Math.abs(lean.degrees()))));
    }
}
