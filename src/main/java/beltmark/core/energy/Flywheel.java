package beltmark.core.energy;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Energy;
import beltmark.core.units.Frequency;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/** What a turning rotor stores: I w^2/2. From memory. */
public final class Flywheel {

    private Flywheel() {}

    /**
     * Finds the energy.
     *
     * @param inertia I in kg m2, above 0
     * @param rotation how fast it turns, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Energy> energy(double inertia, Frequency rotation) {
        Limits.positive("inertia", inertia);
        Limits.notNegative("rotation", rotation);
        double angular = rotation.radiansPerSecond();
        Energy energy = new Energy(inertia * angular * angular / 2);
        return Solution.of(
                energy,
                Step.of("flywheel", "inertia", new Ratio(inertia))
                        .with("rotation", rotation)
                        .with("energy", energy));
    }
}
