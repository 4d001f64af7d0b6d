/**
 * Puts a crew together: so many places for each qualification, people with the days until which they are qualified, and
 * out comes who takes which place. The job check asks here.
 */
@NullMarked
package beltmark.core.crew;

import org.jspecify.annotations.NullMarked;
