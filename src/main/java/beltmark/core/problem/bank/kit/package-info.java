/** Problems about the parts of a cleaner: whether the kit is complete, and in what order the parts go together. */
@NullMarked
package beltmark.core.problem.bank.kit;

import org.jspecify.annotations.NullMarked;
