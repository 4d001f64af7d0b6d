package beltmark.core.carryback;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Coverage;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;
import java.util.List;

/**
 * How much of what sticks to the belt cleaners take off: 1 - after/before, both in g/m2 at the same place; in series 1 -
 * product of (1 - eta_i), which takes for granted that each keeps its own efficiency (sticky residue breaks that). Own
 * derivation; no published definition was found.
 */
public final class CleaningEfficiency {

    private CleaningEfficiency() {}

    /**
     * Finds the efficiency of one cleaner.
     *
     * @param before what lies on the belt before it, above 0
     * @param after what lies on the belt after it, not negative, not above {@code before}
     * @return 0..1; with NOTHING_REMOVED at 0
     * @throws Refused AFTER_EXCEEDS_BEFORE, OUT_OF_RANGE
     */
    public static Solution<Ratio> of(Coverage before, Coverage after) {
        Limits.positive("before", before);
        Limits.notNegative("after", after);
        if (after.gramsPerSquareMetre() > before.gramsPerSquareMetre()) {
            throw Refused.because(Refusal.AFTER_EXCEEDS_BEFORE)
                    .with("before", before)
                    .with("after", after);
        }
        Ratio efficiency = new Ratio(1 - after.gramsPerSquareMetre() / before.gramsPerSquareMetre());
        return Solution.of(
                        efficiency,
                        Step.of("cleaning-efficiency", "before", before)
                                .with("after", after)
                                .with("efficiency", efficiency))
                .warnIf(efficiency.value() == 0, Warning.NOTHING_REMOVED);
    }

    /**
     * Finds the efficiency of cleaners one after the other.
     *
     * @param efficiencies of each, 0..1, at least one
     * @throws Refused NOTHING_GIVEN, OUT_OF_RANGE
     */
    public static Solution<Ratio> inSeries(List<Double> efficiencies) {
        if (efficiencies.isEmpty()) {
            throw Refused.because(Refusal.NOTHING_GIVEN).with("what", "efficiencies");
        }
        double left = 1;
        for (double efficiency : efficiencies) {
            left *= 1 - Limits.within("efficiencies", efficiency, 0, 1);
        }
        Ratio together = new Ratio(1 - left);
        return Solution.of(
                together,
                Step.of("in-series", "cleaners", new Ratio(efficiencies.size()))
                        .with("left", new Ratio(left))
                        .with("together", together));
    }
}
