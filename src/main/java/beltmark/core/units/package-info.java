/**
 * Lengths and other quantities as value types, and the reading and printing of what people type.
 * Text goes in, exact values come out; everybody who handles a number uses these types.
 */
@NullMarked
package beltmark.core.units;

import org.jspecify.annotations.NullMarked;
