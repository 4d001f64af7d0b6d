package beltmark.procedure;

import java.time.Instant;

/**
 * A version of a procedure without what it says.
 *
 * @param record the number of its record
 * @param procedure the id of the procedure
 * @param version the version
 * @param machine the name of the machine
 * @param person who entered it
 * @param at when
 */
record VersionRow(long record, String procedure, int version, String machine, String person, Instant at) {}
