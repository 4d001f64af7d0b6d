/**
 * Practice on generated problems: a person works the set-up bench or a drill part by part; every answer is graded by the
 * core and recorded.
 */
@NullMarked
package beltmark.practice;

import org.jspecify.annotations.NullMarked;
