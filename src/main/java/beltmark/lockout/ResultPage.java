package beltmark.lockout;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * What came of a sitting. It says whether the quiz is passed and nothing about work.
 *
 * @param view what all pages share
 * @param passed whether the quiz is passed
 * @param score how many questions are right, and how many are needed
 * @param critical the critical questions missed, by name
 * @param rows every question in the order of the sitting
 */
public record ResultPage(View view, boolean passed, String score, List<Row> critical, List<Row> rows) implements Page {

    /** {@return the heading} */
    public String title() {
        return view.text("lockout.result-page.title." + (passed ? "passed" : "not-passed"));
    }

    /** {@return what the result is worth and what comes next} */
    public String meaning() {
        return view.text("lockout.result-page.meaning." + (passed ? "passed" : "not-passed"));
    }

    /**
     * A question.
     *
     * @param number its number in the sitting
     * @param name what it was about
     * @param status the word for right or wrong that the shared texts are under
     * @param critical whether it is critical
     * @param address where it can be looked at again
     */
    public record Row(int number, String name, String status, boolean critical, String address) {}
}
