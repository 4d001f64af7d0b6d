/**
 * Keeps what practice shows of each person, and says what to practise next. Practice writes it with every answer, in the
 * same change; the start page and the practice page read it.
 */
@NullMarked
package beltmark.mastery;

import org.jspecify.annotations.NullMarked;
