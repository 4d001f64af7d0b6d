package beltmark.core.statistics;

/**
 * How consistent a test of k items is, from one sitting of it. All variances are over N, above and below, so that KR-20
 * is Cronbach's alpha (Kuder and Richardson 1937, Psychometrika 2, 151-160; Cronbach 1951, Psychometrika 16, 297-334).
 * In a test that nearly all pass, scores hardly differ and these figures are low without the test being bad.
 */
public final class Reliability {

    private Reliability() {}

    /** {@return KR-20 = k/(k−1) · (1 − Σpq/s²), at most 1, negative when items work against each other} */
    public static Measure kr20(ResponseCounts counts) {
        Scores scores = counts.scores();
        double within = 0;
        for (int item = 0; item < counts.items(); item++) {
            within += itemVariance(counts, item);
        }
        return consistency(counts.items(), within, scores, Undefined.CONSTANT_SCORES);
    }

    /** {@return KR-20 of the test without this item, from 0} */
    static Measure kr20Without(ResponseCounts counts, int left) {
        double within = 0;
        for (int item = 0; item < counts.items(); item++) {
            within += item == left ? 0 : itemVariance(counts, item);
        }
        return consistency(counts.items() - 1, within, scoresWithout(counts, left), Undefined.CONSTANT_REST);
    }

    /** {@return KR-21 = k/(k−1) · (1 − M(k−M)/(k s²)): KR-20 for items of one difficulty, from the scores alone} */
    public static Measure kr21(Scores scores) {
        int k = scores.items();
        return scores.mean().flatMap(mean -> consistency(k, mean * (k - mean) / k, scores, Undefined.CONSTANT_SCORES));
    }

    /**
     * The standard error of a score, s √(1 − reliability), with s the standard deviation over N − 1.
     *
     * @param scores the scores
     * @param reliability KR-20 of them
     * @return it, in items; nothing where there is no reliability
     */
    public static Measure standardError(Scores scores, Measure reliability) {
        return scores.sampleDeviation()
                .flatMap(deviation -> reliability.map(value -> deviation * Math.sqrt(1 - value)));
    }

    /**
     * Lord's standard error of one person's score, √(x(k−x)/(k−1)): that of drawing k items from very many, for which no
     * group is needed (F. M. Lord 1955, Educ. Psychol. Meas. 15, 325-336; from memory). It closes up at 0 and k, where
     * Wilson's interval says more.
     *
     * @param score x, 0..k
     * @param items k
     * @return it, in items; nothing for one item
     */
    public static Measure lordStandardError(double score, int items) {
        if (!(score >= 0 && score <= items)) {
            throw new IllegalArgumentException("a score of " + score + " of " + items);
        }
        return items == 1
                ? Measure.undefined(Undefined.ONE_ITEM)
                : Measure.of(Math.sqrt(score * (items - score) / (items - 1)));
    }

    /** {@return the mean of Lord's standard errors of these people} */
    public static Measure meanLordStandardError(Scores scores) {
        if (scores.people() == 0) {
            return Measure.undefined(Undefined.NOBODY);
        }
        Measure mean = Measure.of(0);
        for (int score = 0; score <= scores.items(); score++) {
            double weight = (double) scores.at(score) / scores.people();
            Measure error = lordStandardError(score, scores.items());
            mean = mean.flatMap(sum -> error.map(one -> sum + weight * one));
        }
        return mean;
    }

    private static Measure consistency(int items, double within, Scores scores, Undefined noSpread) {
        if (items < 2) {
            return Measure.undefined(Undefined.ONE_ITEM);
        }
        if (scores.people() == 1) {
            return Measure.undefined(Undefined.ONE_PERSON);
        }
        if (scores.people() > 0 && scores.isConstant()) {
            return Measure.undefined(noSpread);
        }
        return scores.variance().map(between -> items / (items - 1.0) * (1 - within / between));
    }

    /** pq over all people, those who did not reach the item counted as wrong, as they are in the score. */
    private static double itemVariance(ResponseCounts counts, int item) {
        double share = (double) counts.hits(item).hits() / Math.max(1, counts.people());
        return share * (1 - share);
    }

    private static Scores scoresWithout(ResponseCounts counts, int item) {
        long[] rest = new long[Math.max(1, counts.items())];
        for (int score = 0; score < rest.length; score++) {
            rest[score] = counts.people(score) - counts.right(item, score) + counts.right(item, score + 1);
        }
        return new Scores(rest);
    }
}
