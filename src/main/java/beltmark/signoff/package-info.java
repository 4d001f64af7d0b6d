/**
 * Sign-off of a demonstration: a supervisor's as-left measures and observations go in, are checked by the core, shown
 * whole, and with the supervisor's PIN become one record. Nobody signs off themselves, or somebody of another crew.
 */
@NullMarked
package beltmark.signoff;

import org.jspecify.annotations.NullMarked;
