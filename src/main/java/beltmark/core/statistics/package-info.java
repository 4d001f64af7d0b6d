/**
 * Shares of a group and how sure one can be of them: counts go in, a share with its interval comes out. The lockout
 * review shows them; whatever else counts people or answers uses the same.
 */
@NullMarked
package beltmark.core.statistics;

import org.jspecify.annotations.NullMarked;
