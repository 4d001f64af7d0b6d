package beltmark.desk;

import java.time.LocalDate;

/**
 * A retraining order.
 *
 * @param record the number of its record
 * @param personId who is to be retrained
 * @param person that person's name
 * @param crew that person's crew
 * @param code the id of its {@link ReasonCode}
 * @param orderedOn the day at the site
 * @param dueOn the last day
 * @param open whether nothing has closed it
 */
record Order(
        long record,
        long personId,
        String person,
        String crew,
        String code,
        LocalDate orderedOn,
        LocalDate dueOn,
        boolean open) {

    boolean isOverdue(LocalDate today) {
        return open && dueOn.isBefore(today);
    }
}
