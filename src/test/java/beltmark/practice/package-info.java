@NullMarked
package beltmark.practice;

import org.jspecify.annotations.NullMarked;
