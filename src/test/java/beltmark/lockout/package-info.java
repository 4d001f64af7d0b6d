@NullMarked
package beltmark.lockout;

import org.jspecify.annotations.NullMarked;
