/**
 * The page of all words of the trade. The words are texts; finding them in other pages is in {@code texts}, where every
 * feature can ask for it.
 */
@NullMarked
package beltmark.glossary;

import org.jspecify.annotations.NullMarked;
