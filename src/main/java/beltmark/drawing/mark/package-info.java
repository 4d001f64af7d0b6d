/**
 * Drawings of marks: posts with their heights, cupped and sloping belts, brackets out of square, the pole across the
 * conveyor. A scene's lengths and the reader's words go in; a drawing to scale comes out.
 */
@NullMarked
package beltmark.drawing.mark;

import org.jspecify.annotations.NullMarked;
