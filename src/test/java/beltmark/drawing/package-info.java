/** Tests of drawings, on their rendered SVG. */
@NullMarked
package beltmark.drawing;

import org.jspecify.annotations.NullMarked;
