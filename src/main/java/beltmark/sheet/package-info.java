/**
 * The set-up sheet as a page: one form, one address that carries the whole situation, one printed page, and the sheets a
 * crew has kept. All numbers come from {@code core.sheet}.
 */
@NullMarked
package beltmark.sheet;

import org.jspecify.annotations.NullMarked;
