/**
 * Problem families: a family, a code and the hardware cards give one problem, always the same, with its parts,
 * right answers and slips. Practice pages, papers and the command line draw from here.
 */
@NullMarked
package beltmark.core.problem;

import org.jspecify.annotations.NullMarked;
