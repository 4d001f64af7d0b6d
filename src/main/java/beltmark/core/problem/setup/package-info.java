/**
 * The set-up problems: parts, slips and the draw of a situation. Content files give the ranges; the pages show what
 * is posed here.
 */
@NullMarked
package beltmark.core.problem.setup;

import org.jspecify.annotations.NullMarked;
