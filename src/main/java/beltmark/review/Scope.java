package beltmark.review;

/**
 * What part of the records a review takes in.
 *
 * @param quiz the id of the quiz
 * @param version the version whose questions are counted
 * @param crew the crew, 0 for all of them
 */
record Scope(String quiz, int version, long crew) {

    /** Stands for every crew. */
    static final long ALL_CREWS = 0;
}
