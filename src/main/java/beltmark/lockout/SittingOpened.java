package beltmark.lockout;

/**
 * Body of the record {@code lockout.sitting}.
 *
 * @param quiz the id of the quiz
 * @param version its version
 * @param seed what the order of questions and options follows from
 */
record SittingOpened(String quiz, int version, long seed) {}
