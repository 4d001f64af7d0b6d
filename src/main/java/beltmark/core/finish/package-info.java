/**
 * What is read at the blade after a set-up, beside the marks, springs and sleeves of {@code core.setup}: whether it is in
 * the middle of the belt, how it stands on it, how it comes back from the bounce test, and whether the tallest splice
 * passes. Readings and the site's limits go in, a finding for each comes out.
 */
@NullMarked
package beltmark.core.finish;

import org.jspecify.annotations.NullMarked;
