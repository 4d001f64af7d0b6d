@NullMarked
package beltmark.review;

import org.jspecify.annotations.NullMarked;
