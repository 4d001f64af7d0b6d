/** Tests of the drawings of a set-up, on their rendered SVG. */
@NullMarked
package beltmark.drawing.setup;

import org.jspecify.annotations.NullMarked;
