package beltmark.sheet;

import java.time.Instant;

/**
 * A sheet in a crew's list.
 *
 * @param record the number of its record
 * @param card the hardware card's id
 * @param tip the tip's id
 * @param place where, in the crew's own words; may be empty
 * @param person who kept it
 * @param at when
 */
public record SavedSheet(long record, String card, String tip, String place, String person, Instant at) {}
