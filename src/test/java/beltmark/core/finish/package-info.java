@NullMarked
package beltmark.core.finish;

import org.jspecify.annotations.NullMarked;
