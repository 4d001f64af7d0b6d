/** Beltmark: the wiring of the server; every feature and the core have a package of their own below. */
@NullMarked
package beltmark;

import org.jspecify.annotations.NullMarked;
