package beltmark.core.spring;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Pressure;
import beltmark.core.units.Ratio;

/**
 * The largest shear stress in the wire: tau = K 8 F D/(pi d^3), with the force F in N, mean coil diameter D and wire
 * diameter d in mm and a {@link StressFactor} K. Source: Shigley's Mechanical Engineering Design, eq. 10-7 (seen
 * second-hand).
 */
public final class ShearStress {

    private static final double LEAST_SAFETY_AT_SOLID = 1.2;

    private ShearStress() {}

    /**
     * Finds the stress.
     *
     * @param force the force on the spring F, not negative
     * @param wire the wire diameter d, above 0
     * @param meanCoil the mean coil diameter D, above d
     * @param factor which correction; Bergsträsser as wound, direct shear only after presetting
     * @return tau; with INDEX_OUTSIDE_4_TO_12 where it applies
     * @throws Refused COIL_NOT_LARGER_THAN_WIRE, OUT_OF_RANGE
     */
    public static Solution<Pressure> of(Force force, Length wire, Length meanCoil, StressFactor factor) {
        double index = SpringIndex.checked(wire, meanCoil);
        Limits.notNegative("force", force);
        Ratio correction = new Ratio(factor.at(index));
        double d = wire.millimetres();
        double plain = 8 * force.newtons() * meanCoil.millimetres() / (Math.PI * d * d * d);
        Pressure stress = new Pressure(correction.value() * plain);
        return Solution.of(
                        stress,
                        Step.of("stress-factor", "index", new Ratio(index)).with("factor", correction),
                        Step.of("shear-stress", "factor", correction)
                                .with("force", force)
                                .with("meanCoil", meanCoil)
                                .with("wire", wire)
                                .with("stress", stress))
                .warnIf(SpringIndex.isDoubtful(index), Warning.INDEX_OUTSIDE_4_TO_12);
    }

    /**
     * Finds the safety factor when the coils touch, n = Ssy/tau_s; at least 1.2 is wanted there, not at the set load
     * (Shigley eq. 10-21, seen second-hand).
     *
     * @param strength what the wire may bear in shear Ssy, above 0
     * @param stressAtSolid the stress at solid length tau_s, above 0
     * @return n; with SAFETY_BELOW_1_2 where it applies
     */
    public static Solution<Ratio> safetyAtSolid(Pressure strength, Pressure stressAtSolid) {
        Limits.positive("strength", strength);
        Limits.positive("stressAtSolid", stressAtSolid);
        Ratio safety = new Ratio(strength.megapascals() / stressAtSolid.megapascals());
        return Solution.of(
                        safety,
                        Step.of("safety-at-solid", "strength", strength)
                                .with("stressAtSolid", stressAtSolid)
                                .with("safety", safety))
                .warnIf(Limits.isBelow(safety.value(), LEAST_SAFETY_AT_SOLID), Warning.SAFETY_BELOW_1_2);
    }
}
