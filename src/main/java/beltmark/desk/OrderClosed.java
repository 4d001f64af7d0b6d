package beltmark.desk;

import java.time.LocalDate;

/**
 * Body of the record {@code desk.retraining-closed}.
 *
 * @param order the record of the order
 * @param trainedOn the day of the training
 * @param trainer who trained
 * @param paper the record of the paper that was passed after the order
 * @param demonstration the record of a demonstration signed after the order; 0 when the observation was written down here
 * @param observedOn the day of the observation
 * @param observation who watched and what was seen; empty with a demonstration
 */
record OrderClosed(
        long order,
        LocalDate trainedOn,
        String trainer,
        long paper,
        long demonstration,
        LocalDate observedOn,
        String observation) {}
