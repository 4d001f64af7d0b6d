package beltmark.analysis;

import beltmark.core.statistics.Bounds;
import java.util.Optional;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * The interval of KR-20 or alpha: 1 − (1−α) F.₉₇₅ to 1 − (1−α) F.₀₂₅, with N−1 and (N−1)(k−1) degrees of freedom (L. S.
 * Feldt, D. J. Woodruff and F. A. Salih 1987, Appl. Psychol. Meas. 11, 93-103, p. 95, eq. 6 and 7).
 */
public final class Feldt {

    private static final double TAIL = 0.025;

    private Feldt() {}

    /**
     * The 95 % interval.
     *
     * @param reliability α, 1 at most
     * @param people N
     * @param items k
     * @return the interval, which may reach below 0; nothing for fewer than two people or two items
     */
    public static Optional<Bounds> interval95(double reliability, long people, int items) {
        if (people < 2 || items < 2) {
            return Optional.empty();
        }
        double within = people - 1.0;
        FDistribution f = FDistribution.of(within, within * (items - 1));
        return Optional.of(new Bounds(
                1 - (1 - reliability) * f.inverseSurvivalProbability(TAIL),
                1 - (1 - reliability) * f.inverseCumulativeProbability(TAIL)));
    }
}
