/**
 * What can still move when a conveyor is switched off: lifted weights, tensioned belts, springs, compressed gas,
 * charged capacitors, rotors. Lockout practice and the command line call it.
 */
@NullMarked
package beltmark.core.energy;

import org.jspecify.annotations.NullMarked;
