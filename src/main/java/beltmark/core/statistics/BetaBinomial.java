package beltmark.core.statistics;

/**
 * Scores on one and on two forms of k items, when the share each person masters is drawn from a beta distribution.
 * B(a+x, b+m−x)/B(a,b) is a(a+1)…(a+x−1) · b(b+1)…(b+m−x−1) / (a+b)(a+b+1)…(a+b+m−1); its logarithm is a sum of
 * logarithms, so that nothing overflows in a long test.
 */
final class BetaBinomial {

    private final int items;
    private final double[] choices;
    private final double[] risingA;
    private final double[] risingB;
    private final double[] risingBoth;

    /**
     * @param items k
     * @param a above 0
     * @param b above 0
     */
    BetaBinomial(int items, double a, double b) {
        this.items = items;
        risingA = rising(a, 2 * items);
        risingB = rising(b, 2 * items);
        risingBoth = rising(a + b, 2 * items);
        choices = new double[items + 1];
        for (int x = 1; x <= items; x++) {
            choices[x] = choices[x - 1] + Math.log((double) (items - x + 1) / x);
        }
    }

    private static double[] rising(double from, int length) {
        double[] sums = new double[length + 1];
        for (int i = 0; i < length; i++) {
            sums[i + 1] = sums[i] + Math.log(from + i);
        }
        return sums;
    }

    /** {@return the chance of a score of this much or more} */
    double atLeast(int cut) {
        double chance = 0;
        for (int x = cut; x <= items; x++) {
            chance += Math.exp(choices[x] + risingA[x] + risingB[items - x] - risingBoth[items]);
        }
        return Math.min(1, chance);
    }

    /** {@return the chance of less on the first form and this much or more on the second} */
    double disagreement(int cut) {
        double chance = 0;
        for (int x = 0; x < cut; x++) {
            for (int y = cut; y <= items; y++) {
                chance += Math.exp(
                        choices[x] + choices[y] + risingA[x + y] + risingB[2 * items - x - y] - risingBoth[2 * items]);
            }
        }
        return Math.min(0.5, chance);
    }
}
