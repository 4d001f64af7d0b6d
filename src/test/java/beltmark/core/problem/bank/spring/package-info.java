/** Tests of the problems about the blade and its springs. */
@NullMarked
package beltmark.core.problem.bank.spring;

import org.jspecify.annotations.NullMarked;
