package beltmark.desk;

import java.time.LocalDate;

/**
 * Body of the record {@code desk.retraining-ordered}.
 *
 * @param code the id of its {@link ReasonCode}
 * @param reason what happened, in the coordinator's words
 * @param dueOn the last day
 */
record OrderMade(String code, String reason, LocalDate dueOn) {}
