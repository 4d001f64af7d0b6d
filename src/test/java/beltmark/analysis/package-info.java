@NullMarked
package beltmark.analysis;

import org.jspecify.annotations.NullMarked;
