/**
 * Many people put on the site at once, from a file or pasted rows: read, shown row by row with what is wrong, and stored
 * whole when an admin says so.
 */
@NullMarked
package beltmark.people.intake;

import org.jspecify.annotations.NullMarked;
