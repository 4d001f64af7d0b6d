/**
 * Where things are about the belt line: slopes, levels, centring, squareness and clearances. Measures go in, the
 * figures to mark or to check come out. Set-up sheets, problems and the command line call it.
 */
@NullMarked
package beltmark.core.geometry;

import org.jspecify.annotations.NullMarked;
