/** Tests of the drawings of the blade and its springs. */
@NullMarked
package beltmark.drawing.spring;

import org.jspecify.annotations.NullMarked;
