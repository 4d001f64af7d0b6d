/**
 * The first admin of an empty site: whoever reads the code that the server prints at its start may put themselves on it.
 */
@NullMarked
package beltmark.people.first;

import org.jspecify.annotations.NullMarked;
