package beltmark.core.energy;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Energy;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Pressure;
import beltmark.core.units.Volume;

/** What compressed air stores in a receiver, and how hard it pushes in a cylinder. */
public final class CompressedAir {

    /** The standard atmosphere, 101.325 kPa (from memory). */
    public static final Pressure ATMOSPHERE = new Pressure(0.101_325);

    /** The ratio of specific heats of air (from memory; it gives the 2.5 and 0.286 of the published form). */
    private static final double GAMMA = 1.4;

    private static final double HIGHLY_HAZARDOUS_JOULES = 100_000;
    private static final double JOULES_PER_MEGAPASCAL_LITRE = 1000;

    private CompressedAir() {}

    /**
     * Finds what a receiver sets free when it bursts or vents: p V/(gamma - 1) [1 - (pa/p)^((gamma - 1)/gamma)] with the
     * ABSOLUTE pressure p = gauge + pa and gamma 1.4. Source: ASME PCC-2, appendix 501-II, eq. II-2 (seen as an excerpt).
     *
     * @param gauge what the gauge reads, above 0
     * @param atmosphere the pressure around pa, above 0
     * @param volume of the receiver V, above 0
     * @return the energy; with GAS_ENERGY_OVER_100_KJ where it applies
     * @throws Refused NOT_PRESSURISED, OUT_OF_RANGE
     */
    public static Solution<Energy> receiver(Pressure gauge, Pressure atmosphere, Volume volume) {
        Limits.positive("atmosphere", atmosphere);
        Limits.positive("volume", volume);
        requirePressurised(gauge);
        Pressure absolute = new Pressure(gauge.megapascals() + atmosphere.megapascals());
        double expansion = 1 - Math.pow(atmosphere.megapascals() / absolute.megapascals(), (GAMMA - 1) / GAMMA);
        double product = absolute.megapascals() * volume.litres() * JOULES_PER_MEGAPASCAL_LITRE;
        Energy energy = new Energy(product / (GAMMA - 1) * expansion);
        return Solution.of(
                        energy,
                        Step.of("absolute-pressure", "gauge", gauge)
                                .with("atmosphere", atmosphere)
                                .with("absolute", absolute),
                        Step.of("air-energy", "absolute", absolute)
                                .with("atmosphere", atmosphere)
                                .with("volume", volume)
                                .with("energy", energy))
                .warnIf(Limits.isAbove(energy.joules(), HIGHLY_HAZARDOUS_JOULES), Warning.GAS_ENERGY_OVER_100_KJ);
    }

    /**
     * Finds the force of a cylinder, pi D^2/4 p with the gauge pressure; on the rod side the rod takes its area away.
     * Definition of pressure.
     *
     * @param gauge what the gauge reads p, above 0
     * @param bore of the cylinder D, above 0
     * @param rod the diameter of the rod, not negative, below the bore; 0 on the side without
     * @throws Refused NOT_PRESSURISED, OUT_OF_RANGE
     */
    public static Solution<Force> cylinder(Pressure gauge, Length bore, Length rod) {
        Limits.positive("bore", bore);
        Limits.notNegative("rod", rod);
        Limits.within("rod", rod, 0, Math.nextDown(bore.millimetres()));
        requirePressurised(gauge);
        double squares = Math.pow(bore.millimetres(), 2) - Math.pow(rod.millimetres(), 2);
        Force force = new Force(Math.PI / 4 * squares * gauge.megapascals());
        return Solution.of(
                force,
                Step.of("cylinder-force", "bore", bore)
                        .with("rod", rod)
                        .with("gauge", gauge)
                        .with("force", force));
    }

    private static void requirePressurised(Pressure gauge) {
        if (gauge.megapascals() <= 0) {
            throw Refused.because(Refusal.NOT_PRESSURISED).with("gauge", gauge);
        }
        Limits.positive("gaugePressure", gauge);
    }
}
