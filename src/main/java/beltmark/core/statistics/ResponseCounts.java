package beltmark.core.statistics;

import java.util.List;

/**
 * What is kept of a table of people by items: for each item and each score, how many people reached the item and how
 * many had it right. Every statistic of the test follows from it, so that a million people need no more room than ten.
 * A blank counts as wrong for the score.
 */
public final class ResponseCounts {

    private final long[] people;
    private final long[][] reached;
    private final long[][] right;
    // sums over the scores: the statistics of one item ask for those of all others
    private final long[] reachedInAll;
    private final long[] rightInAll;
    private long everybody;

    /**
     * @param items k, how many items there are, 1 or more
     */
    public ResponseCounts(int items) {
        if (items < 1) {
            throw new IllegalArgumentException("a test of " + items + " items");
        }
        people = new long[items + 1];
        reached = new long[items][items + 1];
        right = new long[items][items + 1];
        reachedInAll = new long[items];
        rightInAll = new long[items];
    }

    /** {@return k, how many items there are} */
    public int items() {
        return right.length;
    }

    /** {@return how many people have each score} */
    public Scores scores() {
        return new Scores(people);
    }

    /** Counts one person by the answers to all items, in order. */
    public void add(List<Response> answers) {
        if (answers.size() != items()) {
            throw new IllegalArgumentException(answers.size() + " answers to " + items() + " items");
        }
        int score = 0;
        for (Response answer : answers) {
            score += answer == Response.RIGHT ? 1 : 0;
        }
        addPeople(score, 1);
        for (int item = 0; item < right.length; item++) {
            Response answer = answers.get(item);
            add(item, score, answer == Response.RIGHT ? 1 : 0, answer == Response.NOT_REACHED ? 0 : 1);
        }
    }

    /** Counts people that were counted elsewhere, by their score. */
    public void addPeople(int score, long count) {
        people[score] += count;
        everybody += count;
    }

    /**
     * Counts, for one item, people that were counted elsewhere; {@link #addPeople} counts their scores.
     *
     * @param item which item, from 0
     * @param score their score, 0..k
     * @param hits how many had it right, of how many that reached it
     */
    public void addItem(int item, int score, Proportion hits) {
        add(item, score, hits.hits(), hits.trials());
    }

    private void add(int item, int score, long hits, long trials) {
        reached[item][score] += trials;
        right[item][score] += hits;
        reachedInAll[item] += trials;
        rightInAll[item] += hits;
    }

    /** {@return how many people there are} */
    public long people() {
        return everybody;
    }

    long people(int score) {
        return people[score];
    }

    /** How many of those with this score who reached the item. */
    long reached(int item, int score) {
        return reached[item][score];
    }

    long right(int item, int score) {
        return right[item][score];
    }

    /** The scores of those who reached the item. */
    Scores scoresReaching(int item) {
        return new Scores(reached[item]);
    }

    /** {@return how many of those who reached the item had it right} */
    public Proportion hits(int item) {
        return new Proportion(rightInAll[item], reachedInAll[item]);
    }
}
