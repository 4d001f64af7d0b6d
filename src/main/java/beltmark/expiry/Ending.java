package beltmark.expiry;

import beltmark.core.qualification.Standing;
import java.time.LocalDate;

/**
 * A qualification that somebody has and that will run out if nothing more is recorded.
 *
 * @param member who
 * @param qualification the id of what
 * @param lastDay its last day
 * @param standing where the person stands today
 */
public record Ending(Member member, String qualification, LocalDate lastDay, Standing standing) {}
