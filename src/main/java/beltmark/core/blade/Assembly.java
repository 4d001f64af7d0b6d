package beltmark.core.blade;

import beltmark.core.units.Angle;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Mass;

/**
 * What the two springs carry and press against the belt.
 *
 * @param moving the mass of pole, blade, rods and moving seats m, not negative
 * @param slope of the belt at the cleaner theta, -89..89 degrees
 * @param blade the length of the blade on the belt b, above 0
 */
public record Assembly(Mass moving, Angle slope, Length blade) {

    private static final double STEEPEST = 89;

    public Assembly {
        Limits.notNegative("mass", moving);
        Limits.within("slope", slope, -STEEPEST, STEEPEST);
        Limits.positive("blade", blade);
    }

    /**
     * {@return the part of the weight that is square to the belt, m g cos(theta); it opposes the springs in both
     * orientations, because the blade presses upwards (own derivation)}
     */
    public Force weightAcross() {
        return moving.weight().times(slope.cos());
    }
}
