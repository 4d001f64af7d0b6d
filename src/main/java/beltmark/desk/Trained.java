package beltmark.desk;

import java.time.LocalDate;
import java.util.List;

/**
 * A line of the training certification, with exactly what 29 CFR 1910.147(c)(7)(iv) asks for.
 *
 * @param name the employee's name
 * @param days the dates of training, the first first
 */
record Trained(String name, List<LocalDate> days) {

    Trained {
        days = List.copyOf(days);
    }
}
