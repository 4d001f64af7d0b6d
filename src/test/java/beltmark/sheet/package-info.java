@NullMarked
package beltmark.sheet;

import org.jspecify.annotations.NullMarked;
