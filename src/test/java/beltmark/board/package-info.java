@NullMarked
package beltmark.board;

import org.jspecify.annotations.NullMarked;
