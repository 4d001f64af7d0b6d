/**
 * Problem families about the blade and its springs: angle, setting, nut turns, uneven sides, travel and bounce. Each
 * recipe draws numbers, lets the formulas of the core work them, also in the known wrong ways, and asks for the results.
 */
@NullMarked
package beltmark.core.problem.bank.spring;

import org.jspecify.annotations.NullMarked;
