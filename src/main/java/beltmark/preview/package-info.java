/**
 * The trainer's look at the problems: any family, card, code, language and unit with its answers and slips, and a report on
 * each family. Reads content only; nothing is recorded.
 */
@NullMarked
package beltmark.preview;

import org.jspecify.annotations.NullMarked;
