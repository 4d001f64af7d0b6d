/**
 * Content files: what is shipped in the jar (texts, cards, quizzes, style sheet) is read here as files, and whatever is
 * wrong with them is reported all at once, with file and line.
 */
@NullMarked
package beltmark.content;

import org.jspecify.annotations.NullMarked;
