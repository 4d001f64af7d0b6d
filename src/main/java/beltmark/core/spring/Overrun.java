package beltmark.core.spring;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Force;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/**
 * How much force is left before the coils touch: xi = Fs/Fmax - 1 with the force at solid length Fs = k (L0 - Ls); at
 * least 0.15 is wanted. Source: Shigley's Mechanical Engineering Design, eq. 10-17 and 10-20 (seen second-hand).
 */
public final class Overrun {

    private static final double LEAST = 0.15;

    private Overrun() {}

    /**
     * Finds the overrun.
     *
     * @param spring the spring
     * @param mostForce the largest force it has to carry Fmax, above 0, not above Fs
     * @return xi; with THIN_OVERRUN below 0.15
     * @throws Refused LOAD_BEYOND_SOLID, OUT_OF_RANGE
     */
    public static Solution<Ratio> of(WorkingSpring spring, Force mostForce) {
        Limits.positive("mostForce", mostForce);
        Force atSolid = spring.rate().force(spring.mostCompression());
        if (Limits.isAbove(mostForce.newtons(), atSolid.newtons())) {
            throw Refused.because(Refusal.LOAD_BEYOND_SOLID)
                    .with("mostForce", mostForce)
                    .with("atSolid", atSolid);
        }
        Ratio overrun = new Ratio(atSolid.newtons() / mostForce.newtons() - 1);
        return Solution.of(
                        overrun,
                        Step.of("force-at-solid", "rate", spring.rate())
                                .with("free", spring.free())
                                .with("solid", spring.solid())
                                .with("atSolid", atSolid),
                        Step.of("overrun", "atSolid", atSolid)
                                .with("mostForce", mostForce)
                                .with("overrun", overrun))
                .warnIf(Limits.isBelow(overrun.value(), LEAST), Warning.THIN_OVERRUN);
    }
}
