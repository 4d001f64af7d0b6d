/**
 * A machine's written energy-control procedure as a versioned card, and the questions that are made from it. The pages of
 * the procedure fill it; the lockout quiz asks about it.
 */
@NullMarked
package beltmark.core.procedure;

import org.jspecify.annotations.NullMarked;
