@NullMarked
package beltmark.procedure;

import org.jspecify.annotations.NullMarked;
