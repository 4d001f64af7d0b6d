@NullMarked
package beltmark.core.sheet;

import org.jspecify.annotations.NullMarked;
