/**
 * Technical drawings: a small model of lines, areas, texts and dimension lines on a sheet, measured in millimetres of
 * paper, and the one template that turns a drawing into SVG. Numbers and the reader's words go in, a {@link
 * beltmark.drawing.Drawing} comes out; pages hand it to the template {@code part/drawing.jte}. Nothing here reads a
 * clock, a file or a request.
 */
@NullMarked
package beltmark.drawing;

import org.jspecify.annotations.NullMarked;
