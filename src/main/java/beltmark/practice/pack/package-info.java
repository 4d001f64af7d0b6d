/**
 * Practice on paper, for places without a network: a trainer makes a pack of sheets, one for each person, prints it with its
 * key, and types in later what was written. Answers are judged and counted as if they had been given on screen.
 */
@NullMarked
package beltmark.practice.pack;

import org.jspecify.annotations.NullMarked;
