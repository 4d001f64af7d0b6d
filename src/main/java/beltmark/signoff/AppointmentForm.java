package beltmark.signoff;

import beltmark.web.Form;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The form of an appointment as it was sent, whatever was typed.
 *
 * @param card the hardware
 * @param first the first day
 * @param last the last day
 * @param reason why
 */
public record AppointmentForm(String card, String first, String last, String reason) {

    static AppointmentForm of(Form form) {
        return new AppointmentForm(form.text("card"), form.text("first"), form.text("last"), form.text("reason"));
    }

    /** {@return the form before anything is typed: a year from today} */
    static AppointmentForm blank(LocalDate today) {
        return new AppointmentForm("", today.toString(), today.plusYears(1).toString(), "");
    }

    /** {@return what it says, empty when a day cannot be read} */
    Optional<Appointment> read(String person, String by) {
        try {
            return Optional.of(
                    new Appointment(person, by, card, LocalDate.parse(first), LocalDate.parse(last), reason));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }
}
