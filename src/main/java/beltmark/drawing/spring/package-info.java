/** Drawings of the blade and its springs: a protractor on the belt, springs with their dimensions, the loaded blade. */
@NullMarked
package beltmark.drawing.spring;

import org.jspecify.annotations.NullMarked;
