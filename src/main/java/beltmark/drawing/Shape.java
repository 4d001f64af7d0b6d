package beltmark.drawing;

/** Something on a sheet. The template knows how to write each of them. */
public sealed interface Shape permits Line, Box, Outline, Hatch, Label, Dimension {}
