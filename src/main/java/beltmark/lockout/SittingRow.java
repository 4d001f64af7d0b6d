package beltmark.lockout;

/**
 * A sitting as it was opened.
 *
 * @param id the number of the record that opened it
 * @param personId who sits
 * @param quiz the id of the quiz
 * @param version the version of the quiz
 * @param seed what its order follows from
 */
record SittingRow(long id, long personId, String quiz, int version, long seed) {}
