/**
 * The lockout quiz: questions of three kinds with their keys, the order in which one sitting shows them, the judging of
 * an answer, and the result with its critical questions. Content fills it, the quiz pages and the review call it.
 */
@NullMarked
package beltmark.core.lockout;

import org.jspecify.annotations.NullMarked;
