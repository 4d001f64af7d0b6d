package beltmark.core.spring;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Pressure;
import beltmark.core.units.Ratio;
import beltmark.core.units.SpringRate;

/**
 * The rate of a spring from its dimensions: k = d^4 G/(8 D^3 Na). The long form divides by 1 + 1/(2 C^2), which counts
 * the direct shear of the wire too. Symbols: wire diameter d and mean coil diameter D in mm, active coils Na (3..15
 * recommended), modulus of rigidity G in MPa, index C = D/d. Source: Shigley's Mechanical Engineering Design, eq. 10-8,
 * 10-9 and 10-19 (seen second-hand).
 */
public final class CoilRate {

    private static final double FEWEST_COILS = 3;
    private static final double MOST_COILS = 15;

    private CoilRate() {}

    /**
     * Finds the rate.
     *
     * @param wire the wire diameter d, above 0
     * @param meanCoil the mean coil diameter D, above d
     * @param activeCoils the active coils Na, above 0
     * @param shearModulus the modulus of rigidity G, above 0
     * @return k; with INDEX_OUTSIDE_4_TO_12, COILS_OUTSIDE_3_TO_15 where they apply
     * @throws Refused COIL_NOT_LARGER_THAN_WIRE, NO_ACTIVE_COILS, OUT_OF_RANGE
     */
    public static Solution<SpringRate> of(Length wire, Length meanCoil, double activeCoils, Pressure shearModulus) {
        double index = SpringIndex.checked(wire, meanCoil);
        checkCoils(activeCoils);
        Limits.positive("shearModulus", shearModulus);
        SpringRate rate = plain(wire, meanCoil, activeCoils, shearModulus.megapascals());
        return Solution.of(
                        rate,
                        Step.of("spring-rate", "wire", wire)
                                .with("meanCoil", meanCoil)
                                .with("activeCoils", new Ratio(activeCoils))
                                .with("shearModulus", shearModulus)
                                .with("rate", rate))
                .warnIf(SpringIndex.isDoubtful(index), Warning.INDEX_OUTSIDE_4_TO_12)
                .warnIf(Limits.isOutside(activeCoils, FEWEST_COILS, MOST_COILS), Warning.COILS_OUTSIDE_3_TO_15);
    }

    /** {@return the rate by the long form, k/(1 + 1/(2 C^2)); arguments and refusals as {@link #of}} */
    public static Solution<SpringRate> longForm(
            Length wire, Length meanCoil, double activeCoils, Pressure shearModulus) {
        Solution<SpringRate> simple = of(wire, meanCoil, activeCoils, shearModulus);
        Ratio index = new Ratio(SpringIndex.checked(wire, meanCoil));
        double shear = 1 + 1 / (2 * index.value() * index.value());
        SpringRate rate = new SpringRate(simple.result().newtonsPerMillimetre() / shear);
        return Solution.of(
                        rate,
                        Step.of("spring-rate-long", "simpleRate", simple.result())
                                .with("index", index)
                                .with("rate", rate))
                .after(simple);
    }

    /** {@return k = d^4 G/(8 D^3 Na) of checked arguments} */
    static SpringRate plain(Length wire, Length meanCoil, double activeCoils, double shearModulusMegapascals) {
        double d = wire.millimetres();
        double coil = meanCoil.millimetres();
        return new SpringRate(d * d * d * d * shearModulusMegapascals / (8 * coil * coil * coil * activeCoils));
    }

    /** {@return the active coils, above 0} */
    static double checkCoils(double activeCoils) {
        if (activeCoils <= 0) {
            throw Refused.because(Refusal.NO_ACTIVE_COILS).with("activeCoils", activeCoils);
        }
        return Limits.within("activeCoils", activeCoils, 0, CompressionSpring.MOST_COILS);
    }
}
