package beltmark.people.intake;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Who was put on the site, each with the PIN that is told this once.
 *
 * @param view what all pages share
 * @param arrivals who; empty when the same form had been stored before
 */
public record ArrivedPage(View view, List<Intake.Arrival> arrivals) implements Page {

    public ArrivedPage {
        arrivals = List.copyOf(arrivals);
    }
}
