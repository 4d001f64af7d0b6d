/**
 * How much material sticks to the belt after the head pulley, and what cleaners take off.
 */
@NullMarked
package beltmark.core.carryback;

import org.jspecify.annotations.NullMarked;
