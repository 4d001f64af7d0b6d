package beltmark.core.problem;

import beltmark.core.units.Length;

/**
 * A known wrong way to work a length, with the value it leads to.
 *
 * @param id hyphenated name; the text files say what to tell the person
 * @param value what somebody gets who works it this way
 */
public record Slip(String id, Length value) {}
