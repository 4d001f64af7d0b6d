/**
 * The start page: what each role does next, and the ways to everything else. Reads who is signed in, leads to the other
 * features.
 */
@NullMarked
package beltmark.today;

import org.jspecify.annotations.NullMarked;
