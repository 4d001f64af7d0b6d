/**
 * Judges what a person typed against a part of a problem; practice, papers and the command line call the same
 * grader.
 */
@NullMarked
package beltmark.core.grading;

import org.jspecify.annotations.NullMarked;
