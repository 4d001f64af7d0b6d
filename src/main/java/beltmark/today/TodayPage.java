package beltmark.today;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The start page of a person.
 *
 * @param view what all pages share
 * @param name who is greeted
 * @param next the next action
 * @param drill the ten minutes of practice for today
 * @param habits slips that have become habits, each in a sentence
 * @param others all other ways on
 */
public record TodayPage(
        View view, String name, Errand next, List<DrillLine> drill, List<String> habits, List<Errand> others)
        implements Page {

    public TodayPage {
        drill = List.copyOf(drill);
        habits = List.copyOf(habits);
        others = List.copyOf(others);
    }

    /** {@return what an errand is called} */
    public String title(Errand errand) {
        return view.text("today.errand." + errand.word() + ".title");
    }

    /** {@return what one does there} */
    public String sentence(Errand errand) {
        return view.text("today.errand." + errand.word() + ".sentence");
    }
}
