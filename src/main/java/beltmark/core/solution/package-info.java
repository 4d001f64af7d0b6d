/**
 * The named intermediate values of a calculation, in order, and the known wrong ways to the same result: a computation
 * returns them beside it, and worked solutions, set-up sheets, sign-off and the command line show them.
 */
@NullMarked
package beltmark.core.solution;

import org.jspecify.annotations.NullMarked;
