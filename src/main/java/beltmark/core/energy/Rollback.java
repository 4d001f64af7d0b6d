package beltmark.core.energy;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.LineMass;
import beltmark.core.units.Mass;

/**
 * The force that drives a loaded inclined belt backwards when the drive lets go: load g H - friction/2, not below 0.
 * Source: a holdback rule, "lift less one half of the force to move belt and load horizontally" (a conveyor design
 * knowledge base, seen).
 */
public final class Rollback {

    private static final double MILLIMETRES_PER_METRE = 1000;

    private Rollback() {}

    /**
     * Finds the force.
     *
     * @param load the mass of material per length of belt, not negative
     * @param lift the height H over which the loaded belt rises (not its length), not negative
     * @param friction the force to move belt and load horizontally, not negative
     * @return the force; with HELD_BY_FRICTION where nothing is left of it
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Force> of(LineMass load, Length lift, Force friction) {
        Limits.notNegative("load", load);
        Limits.notNegative("lift", lift);
        Limits.notNegative("friction", friction);
        double metres = lift.millimetres() / MILLIMETRES_PER_METRE;
        Force back = new Force(load.kilogramsPerMetre() * Mass.STANDARD_GRAVITY * metres);
        Force left = back.minus(friction.times(0.5));
        Force rollback = left.newtons() > 0 ? left : Force.ZERO;
        return Solution.of(
                        rollback,
                        Step.of("lift-force", "load", load).with("lift", lift).with("force", back),
                        Step.of("rollback", "liftForce", back)
                                .with("friction", friction)
                                .with("rollback", rollback))
                .warnIf(left.newtons() <= 0, Warning.HELD_BY_FRICTION);
    }
}
