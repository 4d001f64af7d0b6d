package beltmark.desk;

import beltmark.web.Form;
import beltmark.web.Option;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The form of an order as it was sent.
 *
 * @param person who is to be retrained, by number
 * @param code the id of the reason
 * @param reason what happened
 * @param due the last day
 */
public record OrderForm(String person, String code, String reason, String due) {

    private static final int USUAL_DAYS = 14;

    static OrderForm blank(LocalDate today) {
        return new OrderForm("", "", "", today.plusDays(USUAL_DAYS).toString());
    }

    static OrderForm of(Form form) {
        return new OrderForm(form.text("person"), form.text("code"), form.text("reason"), form.text("due"));
    }

    /** {@return what keeps it from being recorded: the name of each field with the word for its fault} */
    Map<String, String> faults(List<Option> people, LocalDate today) {
        Map<String, String> faults = new TreeMap<>();
        if (people.stream().noneMatch(one -> one.value().equals(person))) {
            faults.put("person", "pick");
        }
        if (ReasonCode.find(code).isEmpty()) {
            faults.put("code", "pick");
        }
        if (!Typing.isSaid(reason)) {
            faults.put("reason", "say");
        }
        if (Typing.day(due, today, today.plusYears(1)).isEmpty()) {
            faults.put("due", "due");
        }
        return faults;
    }

    OrderMade toBody() {
        return new OrderMade(code, reason, LocalDate.parse(due));
    }
}
