package beltmark.lockout;

import java.time.Instant;

/**
 * A finished sitting in the list of one's own.
 *
 * @param sitting the number of the record that opened it
 * @param quiz the id of the quiz
 * @param version its version
 * @param right how many questions were right
 * @param asked how many there were
 * @param passed whether the quiz was passed
 * @param finishedAt when the last question was answered
 */
record PastResult(long sitting, String quiz, int version, int right, int asked, boolean passed, Instant finishedAt) {}
