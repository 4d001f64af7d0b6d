@NullMarked
package beltmark.core.procedure;

import org.jspecify.annotations.NullMarked;
