package beltmark.signoff;

import java.time.LocalDate;

/**
 * A demonstration in a list.
 *
 * @param record the number of its record
 * @param person who showed it
 * @param card the id of the hardware card
 * @param on the day
 * @param passed whether it was passed
 */
public record SignedLine(long record, String person, String card, LocalDate on, boolean passed) {}
