/** The families of problems beside the set-up bench, made from their content files and the hardware cards. */
@NullMarked
package beltmark.core.problem.bank;

import org.jspecify.annotations.NullMarked;
