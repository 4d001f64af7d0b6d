/** A whole belt conveyor from the side with its energies, isolation points and controls, for questions about lockout. */
@NullMarked
package beltmark.drawing.conveyor;

import org.jspecify.annotations.NullMarked;
