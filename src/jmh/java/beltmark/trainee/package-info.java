/** Simulated people at the problem bank: what they answer, and what the grader and the practice model make of it. */
@NullMarked
package beltmark.trainee;

import org.jspecify.annotations.NullMarked;
