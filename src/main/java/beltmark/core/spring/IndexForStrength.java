package beltmark.core.spring;

import beltmark.core.refusal.Refusal;
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
 * The index at which a wire is just strong enough, the larger root C = (2 alpha - beta)/(4 beta) + sqrt{[(2 alpha -
 * beta)/(4 beta)]^2 - 3 alpha/(4 beta)} with alpha = Ssy/ns and beta = 8 (1 + xi) Fmax/(pi d^2). Source: Shigley's
 * Mechanical Engineering Design, eq. 10-23 (seen second-hand).
 */
public final class IndexForStrength {

    private IndexForStrength() {}

    /**
     * What the spring has to bear.
     *
     * @param force the largest force Fmax, above 0
     * @param overrun xi, not negative; 0.15 is usual
     * @param safety the safety factor at solid length ns, above 0; 1.2 is usual
     */
    public record Demand(Force force, double overrun, double safety) {

        public Demand {
            Limits.positive("force", force);
            Limits.notNegative("overrun", overrun);
            Limits.positive("safety", safety);
        }
    }

    /**
     * Finds the index.
     *
     * @param wire the wire diameter d, above 0
     * @param shearStrength what the wire may bear in shear Ssy, above 0
     * @param demand what it has to bear
     * @return C; with INDEX_OUTSIDE_4_TO_12 where it applies
     * @throws Refused WIRE_TOO_THIN when no index is strong enough, OUT_OF_RANGE
     */
    public static Solution<Ratio> of(Length wire, Pressure shearStrength, Demand demand) {
        Limits.positive("wire", wire);
        Limits.positive("strength", shearStrength);
        double alpha = shearStrength.megapascals() / demand.safety;
        double d = wire.millimetres();
        double beta = 8 * (1 + demand.overrun) * demand.force.newtons() / (Math.PI * d * d);
        double half = (2 * alpha - beta) / (4 * beta);
        double inside = half * half - 3 * alpha / (4 * beta);
        if (!(inside >= 0) || half + Math.sqrt(inside) <= 1) {
            throw Refused.because(Refusal.WIRE_TOO_THIN).with("wire", wire).with("force", demand.force);
        }
        return solved(new Pressure(alpha), new Pressure(beta), new Ratio(half + Math.sqrt(inside)));
    }

    private static Solution<Ratio> solved(Pressure alpha, Pressure beta, Ratio index) {
        return Solution.of(
                        index,
                        Step.of("index-for-strength", "alpha", alpha)
                                .with("beta", beta)
                                .with("index", index))
                .warnIf(SpringIndex.isDoubtful(index.value()), Warning.INDEX_OUTSIDE_4_TO_12);
    }
}
