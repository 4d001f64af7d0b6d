package beltmark.desk;

import java.time.LocalDate;

/**
 * A paper passed or a demonstration signed after an order.
 *
 * @param record the number of its record
 * @param on the day
 */
record Proof(long record, LocalDate on) {}
