/**
 * Shares of a group and how sure one can be of them; the statistics of a test and of its items, from counts of people by
 * score. Counts go in; a {@link beltmark.core.statistics.Measure} comes out, which is a number or the reason why there is
 * none. The lockout review and the command {@code analyse} show them. Variances are over N unless a method says N − 1.
 */
@NullMarked
package beltmark.core.statistics;

import org.jspecify.annotations.NullMarked;
