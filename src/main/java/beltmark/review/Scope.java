package beltmark.review;

import beltmark.review.first.Period;

/**
 * What part of the records a review takes in.
 *
 * @param quiz the id of the paper
 * @param crew the crew, 0 for all of them
 * @param period the months of the first attempts
 * @param page which page of people, from 1
 */
record Scope(String quiz, long crew, Period period, int page) {

    /** Stands for every crew. */
    static final long ALL_CREWS = 0;

    /** How many people a page has. */
    static final int PEOPLE = 50;

    static Scope of(String quiz, long crew) {
        return new Scope(quiz, crew, Period.EVER, 1);
    }
}
