/**
 * Reading, rounding and adding up what a tape says. Measures go in, rounded measures and tolerances come out.
 */
@NullMarked
package beltmark.core.measure;

import org.jspecify.annotations.NullMarked;
