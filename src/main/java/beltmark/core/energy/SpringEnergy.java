package beltmark.core.energy;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Energy;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;
import beltmark.core.units.SpringRate;

/** What compressed springs store: U = k y^2/2 each. Source: OpenStax College Physics 2e. */
public final class SpringEnergy {

    private static final double MILLIMETRES_PER_METRE = 1000;

    private SpringEnergy() {}

    /**
     * Finds the energy.
     *
     * @param rate of each spring k, above 0
     * @param compression of each y, not negative
     * @param springs how many, above 0
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Energy> of(SpringRate rate, Length compression, double springs) {
        Limits.positive("rate", rate);
        Limits.notNegative("compression", compression);
        Limits.positive("springs", springs);
        double y = compression.millimetres();
        Energy energy = new Energy(springs * rate.newtonsPerMillimetre() * y * y / 2 / MILLIMETRES_PER_METRE);
        return Solution.of(
                energy,
                Step.of("spring-energy", "rate", rate)
                        .with("compression", compression)
                        .with("springs", new Ratio(springs))
                        .with("energy", energy));
    }
}
