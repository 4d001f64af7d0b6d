package beltmark.core.statistics;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How one item did among the people who reached it. Scores are scores on the whole test, where a blank is wrong.
 *
 * @param hits how many had it right, of those who reached it
 * @param notReached how many left it blank
 * @param share p, 0..1: the part that had it right
 * @param pointBiserial r between the item and the score, -1..1
 * @param correctedR r between the item and the score on the other items, -1..1: the item's own part is not in it. This
 *     is the index to judge an item by
 * @param discrimination D, -1..1: p of the best 27 % less p of the worst 27 %. The groups hold exactly .27 n people; of
 *     people with the score at the border each counts by the same fraction, else D would depend on how ties are sorted
 * @param reliabilityWithout KR-20 of the test without the item; over all people
 */
public record ItemStatistics(
        Proportion hits,
        long notReached,
        Measure share,
        Measure pointBiserial,
        Measure correctedR,
        Measure discrimination,
        Measure reliabilityWithout) {

    /** Optimal for normal scores (E. E. Cureton 1957, Psychometrika 22, 293-296). */
    private static final double TAIL = 0.27;

    /** {@return the statistics of an item, from 0} */
    public static ItemStatistics of(ResponseCounts counts, int item) {
        Scores scores = counts.scoresReaching(item);
        Proportion hits = counts.hits(item);
        return new ItemStatistics(
                hits,
                counts.people() - hits.trials(),
                hits.share().map(Measure::of).orElse(Measure.undefined(Undefined.NOBODY)),
                pointBiserial(counts, item, scores, hits),
                correctedR(counts, item, scores, hits),
                discrimination(counts, item, scores),
                Reliability.kr20Without(counts, item));
    }

    /** {@return Wilson's 95 % interval of the share; nothing if nobody reached the item} */
    public Optional<Interval> interval() {
        return hits.wilson95();
    }

    private static Measure pointBiserial(ResponseCounts counts, int item, Scores scores, Proportion hits) {
        return noSpread(scores, hits)
                .map(Measure::undefined)
                .orElseGet(() -> scores.variance()
                        .map(variance -> correlation(covariance(counts, item, scores), variance, variance(hits))));
    }

    /** The score without the item has the variance s² + pq − 2 cov and with the item the covariance cov − pq. */
    private static Measure correctedR(ResponseCounts counts, int item, Scores scores, Proportion hits) {
        Optional<Undefined> noSpread = noSpread(scores, hits).filter(why -> why != Undefined.CONSTANT_SCORES);
        if (noSpread.isPresent()) {
            return Measure.undefined(noSpread.get());
        }
        if (hasConstantRest(counts, item)) {
            return Measure.undefined(Undefined.CONSTANT_REST);
        }
        double own = variance(hits);
        double covariance = covariance(counts, item, scores);
        return scores.variance().map(variance -> correlation(covariance - own, variance + own - 2 * covariance, own));
    }

    private static Optional<Undefined> noSpread(Scores scores, Proportion hits) {
        if (hits.trials() <= 1) {
            return Optional.of(hits.trials() == 0 ? Undefined.NOBODY : Undefined.ONE_PERSON);
        }
        if (hits.hits() == 0 || hits.hits() == hits.trials()) {
            return Optional.of(Undefined.CONSTANT_ITEM);
        }
        return scores.isConstant() ? Optional.of(Undefined.CONSTANT_SCORES) : Optional.empty();
    }

    private static boolean hasConstantRest(ResponseCounts counts, int item) {
        return IntStream.range(0, counts.items())
                        .filter(rest -> counts.reached(item, rest) > counts.right(item, rest)
                                || counts.right(item, rest + 1) > 0)
                        .count()
                <= 1;
    }

    /** Rounding may lead a hair beyond ±1. */
    private static double correlation(double covariance, double first, double second) {
        return Math.max(-1, Math.min(1, covariance / Math.sqrt(first * second)));
    }

    private static double variance(Proportion hits) {
        double share = (double) hits.hits() / hits.trials();
        return share * (1 - share);
    }

    private static double covariance(ResponseCounts counts, int item, Scores scores) {
        double mean = scores.mean().toOptional().orElse(0);
        return IntStream.rangeClosed(0, counts.items())
                        .mapToDouble(score -> counts.right(item, score) * (score - mean))
                        .sum()
                / scores.people();
    }

    private static Measure discrimination(ResponseCounts counts, int item, Scores scores) {
        int k = counts.items();
        long people = scores.people();
        if (people <= 1) {
            return Measure.undefined(people == 0 ? Undefined.NOBODY : Undefined.ONE_PERSON);
        }
        double size = TAIL * people;
        double best = hits(counts, item, IntStream.rangeClosed(0, k).map(score -> k - score), size);
        double worst = hits(counts, item, IntStream.rangeClosed(0, k), size);
        return Measure.of((best - worst) / size);
    }

    /** How many right answers so many people give, taken from the first of these scores on. */
    private static double hits(ResponseCounts counts, int item, IntStream scores, double size) {
        double wanted = size;
        double hits = 0;
        for (int score : scores.toArray()) {
            double there = counts.reached(item, score);
            double taken = Math.min(wanted, there);
            hits += there == 0 ? 0 : taken * counts.right(item, score) / there;
            wanted -= taken;
        }
        return hits;
    }
}
