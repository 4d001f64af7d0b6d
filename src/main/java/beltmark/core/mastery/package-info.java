/**
 * What a person knows as far as practice shows it, and what to practise next. Every function is pure: the same answers in
 * the same order always give the same state, so that all of it can be worked out again from the records alone.
 */
@NullMarked
package beltmark.core.mastery;

import org.jspecify.annotations.NullMarked;
