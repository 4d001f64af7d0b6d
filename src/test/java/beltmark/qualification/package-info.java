@NullMarked
package beltmark.qualification;

import org.jspecify.annotations.NullMarked;
