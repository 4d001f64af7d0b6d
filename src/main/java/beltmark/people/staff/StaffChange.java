package beltmark.people.staff;

import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A change that an admin asks for.
 *
 * @param admin who asks
 * @param person the number of the person it is about
 * @param day the day it holds from, empty when what was typed is no day
 * @param operation names the sending of the form
 */
record StaffChange(Visitor admin, long person, Optional<LocalDate> day, OperationId operation) {

    /** {@return the day, of a change that was found to have one} */
    LocalDate getDay() {
        return day.orElseThrow(() -> new IllegalStateException("a change without a day was let through"));
    }

    /** {@return whether somebody asks for a change to themselves} */
    boolean isOwn() {
        return person == admin.personId();
    }
}
