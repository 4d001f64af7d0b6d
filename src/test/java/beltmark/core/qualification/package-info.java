@NullMarked
package beltmark.core.qualification;

import org.jspecify.annotations.NullMarked;
