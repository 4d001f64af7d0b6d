/**
 * Drawings of one set-up: both ways of mounting a tensioner among its surroundings, the mount marks, the sleeve. A
 * situation, the parts that may be shown answered, and the reader's words go in; a drawing to scale comes out.
 */
@NullMarked
package beltmark.drawing.setup;

import org.jspecify.annotations.NullMarked;
