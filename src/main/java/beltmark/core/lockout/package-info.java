/**
 * The lockout quiz: the bank of questions with their keys and sources, the blueprint by which a paper is drawn from it,
 * the order in which one sitting shows it, the judging of an answer, and the result with its critical questions. Content
 * fills it, the quiz pages, the bank pages and the review call it.
 */
@NullMarked
package beltmark.core.lockout;

import org.jspecify.annotations.NullMarked;
