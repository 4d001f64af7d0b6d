package beltmark.core.problem;

import beltmark.core.units.Quantity;

/**
 * A value that the problem tells.
 *
 * @param id hyphenated name, the key of its label
 * @param value the value
 */
public record Given(String id, Quantity value) {}
