package beltmark.core.statistics;

import java.util.List;

/**
 * A cut set by judges: each says, for each item, what part of people who are just good enough will have it right; the cut
 * is the mean over judges of the sum of their ratings (W. H. Angoff 1971, in Educational Measurement, 2nd ed.). When
 * items are generated, families are judged, not single problems.
 *
 * @param score the cut, 0..k
 * @param deviation the standard deviation of the judges' sums, over J − 1
 * @param standardError deviation / √J
 */
public record JudgedCut(double score, Measure deviation, Measure standardError) {

    /**
     * The cut.
     *
     * @param ratings for each judge the ratings of all items, 0..1 each; one judge or more
     */
    public static JudgedCut of(List<List<Double>> ratings) {
        if (ratings.isEmpty()
                || ratings.stream().anyMatch(own -> own.size() != ratings.get(0).size())) {
            throw new IllegalArgumentException("no judges, or judges who rated different items");
        }
        double[] sums = ratings.stream().mapToDouble(JudgedCut::sum).toArray();
        int judges = sums.length;
        double mean = 0;
        for (double sum : sums) {
            mean += sum / judges;
        }
        double squares = 0;
        for (double sum : sums) {
            squares += (sum - mean) * (sum - mean);
        }
        Measure deviation =
                judges == 1 ? Measure.undefined(Undefined.ONE_PERSON) : Measure.of(Math.sqrt(squares / (judges - 1)));
        return new JudgedCut(mean, deviation, deviation.map(value -> value / Math.sqrt(judges)));
    }

    private static double sum(List<Double> ratings) {
        if (ratings.stream().anyMatch(rating -> !(rating >= 0 && rating <= 1))) {
            throw new IllegalArgumentException("a rating outside 0..1");
        }
        return ratings.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** {@return the least whole score that passes} */
    public int least() {
        // 7.0 put together from tenths may come out a hair above 7
        return (int) Math.ceil(score - 1e-9);
    }
}
