package beltmark.core.setup;

import beltmark.core.units.Length;

/**
 * What a hardware card says of the pole and its brackets.
 *
 * @param bracket how far each bracket stands out from the structure, not negative
 * @param overhang how far the pole stands out beyond each bracket, not negative
 * @param nutPitch the thread pitch of the nut that sets the spring length, above 0
 */
public record PoleCard(Length bracket, Length overhang, Length nutPitch) {}
