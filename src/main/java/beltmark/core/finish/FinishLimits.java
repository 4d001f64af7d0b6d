package beltmark.core.finish;

import beltmark.core.units.Angle;
import beltmark.core.units.Length;

/**
 * What a site holds the readings at the blade to; site policy, no published source.
 *
 * @param centring how far the middle of the blade may be off the middle of the belt, either way
 * @param bladeAngle the angle wanted between the blade and the belt
 * @param angleTolerance how far off it may be, either way
 */
public record FinishLimits(Length centring, Angle bladeAngle, Angle angleTolerance) {}
