@NullMarked
package beltmark.core.crew;

import org.jspecify.annotations.NullMarked;
