package beltmark.bank;

import java.time.Instant;

/**
 * One setting of a switch.
 *
 * @param record the number of its record
 * @param which the switch
 * @param on whether it was set, or taken back
 * @param person who did it
 * @param at when
 */
record SetAt(long record, Switch which, boolean on, String person, Instant at) {}
