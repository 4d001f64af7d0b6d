/** Tests of the package of the same name. */
@NullMarked
package beltmark.core.problem.bank.kit;

import org.jspecify.annotations.NullMarked;
