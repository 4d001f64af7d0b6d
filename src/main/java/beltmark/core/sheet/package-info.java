/**
 * The whole set-up sheet: one installation as measured goes in, every number for it comes out, each with its steps, its
 * doubts, or the reason why there is none. Pages, prints and saved sheets show it.
 */
@NullMarked
package beltmark.core.sheet;

import org.jspecify.annotations.NullMarked;
