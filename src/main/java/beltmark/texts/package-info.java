/**
 * Every text that people read: files per language under {@code content/texts} go in, sentences come out, with lengths
 * in the reader's own graduation. Pages and the command line ask here; nothing else holds visible text.
 */
@NullMarked
package beltmark.texts;

import org.jspecify.annotations.NullMarked;
