package beltmark.review;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * A finished sitting with each answer and the number of its record.
 *
 * @param view what all pages share
 * @param person who sat it
 * @param summary crew, day, version and result in a sentence
 * @param passed whether it was passed
 * @param record the number of the record of the result
 * @param answers its answers in the order they were given
 * @param others the sittings of the same person, this one among them
 */
public record SittingPage(
        View view,
        String person,
        String summary,
        boolean passed,
        long record,
        List<AnswerRow> answers,
        List<OtherRow> others)
        implements Page {

    /** {@return the status in words} */
    public String status() {
        return view.text("review.status." + (passed ? "passed" : "not-passed"));
    }

    /**
     * An answer.
     *
     * @param number the number of the question in the sitting
     * @param ask the question as shown
     * @param critical whether it was critical
     * @param order whether an order was asked for
     * @param status the word for right or wrong that the shared texts are under
     * @param chosen what was chosen, or the order given
     * @param right the key, empty when the answer is right
     * @param source the paragraph
     * @param record the number of its record
     */
    public record AnswerRow(
            int number,
            String ask,
            boolean critical,
            boolean order,
            String status,
            List<String> chosen,
            List<String> right,
            String source,
            long record) {}

    /**
     * A sitting of the same person.
     *
     * @param text day and result
     * @param address where it can be looked at
     * @param isThis whether it is the one shown
     */
    public record OtherRow(String text, String address, boolean isThis) {}
}
