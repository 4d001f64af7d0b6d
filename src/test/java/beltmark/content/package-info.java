@NullMarked
package beltmark.content;

import org.jspecify.annotations.NullMarked;
