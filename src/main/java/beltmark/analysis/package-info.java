/**
 * Test analysis that needs more than the JDK: tables of answers are read from files into the counts of
 * {@link beltmark.core.statistics}, and intervals of a reliability are computed with the F distribution. The command
 * {@code analyse} and the lockout review call it.
 */
@NullMarked
package beltmark.analysis;

import org.jspecify.annotations.NullMarked;
