@NullMarked
package beltmark.preview;

import org.jspecify.annotations.NullMarked;
