/** Tests of the package of the same name. */
@NullMarked
package beltmark.drawing.mark;

import org.jspecify.annotations.NullMarked;
