@NullMarked
package beltmark.core.statistics;

import org.jspecify.annotations.NullMarked;
