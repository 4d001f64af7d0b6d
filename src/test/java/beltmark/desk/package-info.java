@NullMarked
package beltmark.desk;

import org.jspecify.annotations.NullMarked;
