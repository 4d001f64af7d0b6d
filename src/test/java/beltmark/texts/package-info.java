/** Tests of the texts. */
@NullMarked
package beltmark.texts;

import org.jspecify.annotations.NullMarked;
