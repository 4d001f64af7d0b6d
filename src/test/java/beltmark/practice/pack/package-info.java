@NullMarked
package beltmark.practice.pack;

import org.jspecify.annotations.NullMarked;
