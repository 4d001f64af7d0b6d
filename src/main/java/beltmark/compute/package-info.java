/**
 * The table of everything that can be computed: each quantity with its fields, its function in the core and its results.
 * Lines of JSON come in, lines of JSON go out; the command line calls it.
 */
@NullMarked
package beltmark.compute;

import org.jspecify.annotations.NullMarked;
