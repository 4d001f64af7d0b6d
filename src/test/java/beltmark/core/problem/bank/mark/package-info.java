/** Tests of the package of the same name. */
@NullMarked
package beltmark.core.problem.bank.mark;

import org.jspecify.annotations.NullMarked;
