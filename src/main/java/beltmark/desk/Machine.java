package beltmark.desk;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A machine with a written procedure, and its last inspection.
 *
 * @param procedure the id of the procedure
 * @param name the name of the machine
 * @param version the latest version of the procedure
 * @param entered the day the first version was entered
 * @param inspected the day of the last inspection, if there was any
 * @param inspector who made it; empty without one
 * @param included the names of the employees included, with commas between
 * @param finding whether it had a finding
 */
record Machine(
        String procedure,
        String name,
        int version,
        LocalDate entered,
        Optional<LocalDate> inspected,
        String inspector,
        String included,
        boolean finding) {

    /** {@return the last day for the next inspection: at least annually, 29 CFR 1910.147(c)(6)(i)} */
    LocalDate nextBy() {
        return inspected.orElse(entered).plusYears(1);
    }

    boolean isOverdue(LocalDate today) {
        return nextBy().isBefore(today);
    }
}
