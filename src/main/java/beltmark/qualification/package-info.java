/**
 * The facts that qualifications hang on. Features write them down here together with their records, and ask here where a
 * person stands on a day, as known at a moment; what the facts mean is decided by {@code core.qualification} and the rule
 * files. Not a feature itself: every feature may use it.
 */
@NullMarked
package beltmark.qualification;

import org.jspecify.annotations.NullMarked;
