@NullMarked
package beltmark.print;

import org.jspecify.annotations.NullMarked;
