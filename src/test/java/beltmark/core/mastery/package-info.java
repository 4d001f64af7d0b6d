@NullMarked
package beltmark.core.mastery;

import org.jspecify.annotations.NullMarked;
