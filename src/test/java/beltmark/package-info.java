/** Tests of the whole, and what all tests share. */
@NullMarked
package beltmark;

import org.jspecify.annotations.NullMarked;
