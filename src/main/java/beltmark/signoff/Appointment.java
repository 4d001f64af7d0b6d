package beltmark.signoff;

import java.time.LocalDate;

/**
 * Body of the record {@code signoff.assessor-appointed}: the days on which somebody may be assessor on a hardware without
 * holding its qualification, as the first ones of a site must.
 *
 * @param person the name of who is appointed
 * @param by the name of who appoints
 * @param card the id of the hardware card
 * @param first the first day
 * @param last the last day
 * @param reason why, in the words of who appoints
 */
public record Appointment(String person, String by, String card, LocalDate first, LocalDate last, String reason) {}
