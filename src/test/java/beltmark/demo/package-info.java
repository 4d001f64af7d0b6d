@NullMarked
package beltmark.demo;

import org.jspecify.annotations.NullMarked;
