package beltmark.core.setup;

import beltmark.core.units.Length;

/**
 * How far an as-left measure may be off what the card asks for and still be accepted in the field.
 *
 * @param mark a mount mark, either way
 * @param spring a spring length, either way
 * @param sleeve the sleeve showing, either way
 */
public record CardTolerances(Length mark, Length spring, Length sleeve) {}
