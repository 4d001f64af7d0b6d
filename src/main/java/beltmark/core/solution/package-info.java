/**
 * The named intermediate values of a calculation, in order: a computation returns them beside its result,
 * and worked solutions, set-up sheets and the command line show them.
 */
@NullMarked
package beltmark.core.solution;

import org.jspecify.annotations.NullMarked;
