package beltmark.core.finish;

import beltmark.core.setup.Sides;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;

/**
 * What was read at the blade after a set-up, before the lock came off.
 *
 * @param edges from each end of the blade to the belt edge on its side, not negative
 * @param bladeAngle between the blade and the belt, in degrees
 * @param bounce what came of the bounce test
 * @param splice the height of the tallest splice above the belt, not negative
 */
public record Finish(Sides edges, Angle bladeAngle, BounceResult bounce, Length splice) {

    /** {@return how far the middle of the blade is to the right of the middle of the belt; negative to the left} */
    public Length offCentre() {
        return edges.left().minus(edges.right()).times(0.5);
    }
}
