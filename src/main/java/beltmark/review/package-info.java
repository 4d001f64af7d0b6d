/**
 * The coordinator's view of the lockout quiz: who passed and when, what is missed most, who missed a critical question.
 * It reads what the quiz has recorded, with statements of its own, and writes nothing.
 */
@NullMarked
package beltmark.review;

import org.jspecify.annotations.NullMarked;
