/**
 * Problems about marks: reading tapes, adding inch fractions, belt marks and mount marks on level and sloping belts,
 * square brackets, the pole and where the blade sits. The recipes draw; all arithmetic is that of {@code core.measure},
 * {@code core.geometry} and {@code core.setup}.
 */
@NullMarked
package beltmark.core.problem.bank.mark;

import org.jspecify.annotations.NullMarked;
