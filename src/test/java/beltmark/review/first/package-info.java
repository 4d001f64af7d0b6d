@NullMarked
package beltmark.review.first;

import org.jspecify.annotations.NullMarked;
