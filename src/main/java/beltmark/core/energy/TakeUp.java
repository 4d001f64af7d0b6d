package beltmark.core.energy;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Energy;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Mass;

/**
 * What a hanging take-up weight stores and pulls: E = m g h, and m g/2 in each strand of belt. Source: OpenStax College
 * Physics 2e; the halves own derivation.
 *
 * @param energy set free when it falls all the way
 * @param strandTension in each of the two strands that carry it
 */
public record TakeUp(Energy energy, Force strandTension) {

    private static final double MILLIMETRES_PER_METRE = 1000;

    /**
     * Finds both.
     *
     * @param mass of the weight with its carriage m, above 0
     * @param height it can fall h, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<TakeUp> of(Mass mass, Length height) {
        Limits.positive("mass", mass);
        Limits.notNegative("height", height);
        Force weight = mass.weight();
        TakeUp takeUp = new TakeUp(
                new Energy(weight.newtons() * height.millimetres() / MILLIMETRES_PER_METRE), weight.times(0.5));
        return Solution.of(
                takeUp,
                Step.of("weight", "mass", mass).with("weight", weight),
                Step.of("take-up-energy", "weight", weight)
                        .with("height", height)
                        .with("energy", takeUp.energy),
                Step.of("strand-tension", "weight", weight).with("tension", takeUp.strandTension));
    }
}
