package beltmark.desk;

import beltmark.web.Form;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The form that closes an order as it was sent. The paper is not typed: it is on record or it is not.
 *
 * @param trained the day of the training
 * @param trainer who trained
 * @param observed the day of an observation; empty where a demonstration was signed
 * @param observation who watched and what was seen
 */
public record ClosingForm(String trained, String trainer, String observed, String observation) {

    static final ClosingForm BLANK = new ClosingForm("", "", "", "");

    static ClosingForm of(Form form) {
        return new ClosingForm(
                form.text("trained"), form.text("trainer"), form.text("observed"), form.text("observation"));
    }

    /** {@return the words for what is missing, none when the order can be closed} */
    List<String> missing(Order order, Optional<Proof> paper, Optional<Proof> demonstration, LocalDate today) {
        List<String> missing = new ArrayList<>();
        if (Typing.day(trained, order.orderedOn(), today).isEmpty() || !Typing.isSaid(trainer)) {
            missing.add("training");
        }
        if (paper.isEmpty()) {
            missing.add("paper");
        }
        boolean seen = Typing.day(observed, order.orderedOn(), today).isPresent() && Typing.isSaid(observation);
        if (demonstration.isEmpty() && !seen) {
            missing.add("observation");
        }
        return missing;
    }

    OrderClosed toBody(Order order, Proof paper, Optional<Proof> demonstration) {
        return new OrderClosed(
                order.record(),
                LocalDate.parse(trained),
                trainer,
                paper.record(),
                demonstration.map(Proof::record).orElse(0L),
                demonstration.map(Proof::on).orElseGet(() -> LocalDate.parse(observed)),
                demonstration.isPresent() ? "" : observation);
    }
}
