package beltmark.core.statistics;

import java.util.Arrays;
import java.util.stream.LongStream;

/** How many people have each score of a test of k items, 0..k; a score counts the items that are right. */
public final class Scores {

    private final long[] people;

    /**
     * @param people how many have the score 0, 1, … k; none negative
     */
    Scores(long[] people) {
        if (people.length == 0 || Arrays.stream(people).anyMatch(count -> count < 0)) {
            throw new IllegalArgumentException("a score has no people or less than none");
        }
        this.people = people.clone();
    }

    /** {@return how many have the score 0, 1, … k} */
    public static Scores of(long... people) {
        return new Scores(people);
    }

    /** {@return k, the highest score there can be} */
    public int items() {
        return people.length - 1;
    }

    /** {@return how many people have this score, 0..k} */
    public long at(int score) {
        return people[score];
    }

    /** {@return how many people there are} */
    public long people() {
        return LongStream.of(people).sum();
    }

    /** {@return how many people reach the cut, any whole number} */
    public Proportion passing(int cut) {
        return new Proportion(
                Arrays.stream(people).skip(Math.max(0, cut)).sum(),
                Arrays.stream(people).sum());
    }

    /** {@return the mean score, 0..k} */
    public Measure mean() {
        return people() == 0 ? Measure.undefined(Undefined.NOBODY) : Measure.of(about(0, 1) / people());
    }

    /** {@return the variance over N, 0 or more} */
    public Measure variance() {
        return mean().map(mean -> isConstant() ? 0 : about(mean, 2) / people());
    }

    /** {@return the standard deviation of these people: the root of the variance over N} */
    public Measure deviation() {
        return variance().map(Math::sqrt);
    }

    /** {@return the standard deviation they suggest for a population: the root of the variance over N - 1} */
    public Measure sampleDeviation() {
        long n = people();
        return n == 1
                ? Measure.undefined(Undefined.ONE_PERSON)
                : variance().map(variance -> Math.sqrt(variance * n / (n - 1)));
    }

    /** {@return whether no two people differ} */
    public boolean isConstant() {
        return Arrays.stream(people).filter(count -> count > 0).count() <= 1;
    }

    private double about(double middle, int power) {
        double sum = 0;
        for (int score = 0; score < people.length; score++) {
            sum += people[score] * Math.pow(score - middle, power);
        }
        return sum;
    }
}
