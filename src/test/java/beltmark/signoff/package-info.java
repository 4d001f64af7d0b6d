@NullMarked
package beltmark.signoff;

import org.jspecify.annotations.NullMarked;
