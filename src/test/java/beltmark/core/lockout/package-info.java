@NullMarked
package beltmark.core.lockout;

import org.jspecify.annotations.NullMarked;
