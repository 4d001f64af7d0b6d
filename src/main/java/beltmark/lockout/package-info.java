/**
 * The lockout quiz as people sit it: one question at a time, answered once, explained, and at the end a result. Answers
 * and results go to the record book, totals beside them for the review.
 */
@NullMarked
package beltmark.lockout;

import org.jspecify.annotations.NullMarked;
