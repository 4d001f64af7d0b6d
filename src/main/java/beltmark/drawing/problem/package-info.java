/** Drawings of problems: what a person sees of a part, with its answers only once they may be told. */
@NullMarked
package beltmark.drawing.problem;

import org.jspecify.annotations.NullMarked;
