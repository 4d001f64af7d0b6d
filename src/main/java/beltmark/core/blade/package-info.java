/**
 * How hard a sprung blade presses on the belt: spring lengths, moving weight and slope go in; loads, settings, wear,
 * splice travel and bounce come out. Set-up sheets, problems and the command line call it.
 */
@NullMarked
package beltmark.core.blade;

import org.jspecify.annotations.NullMarked;
