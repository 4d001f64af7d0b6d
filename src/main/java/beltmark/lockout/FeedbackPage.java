package beltmark.lockout;

import beltmark.drawing.conveyor.Scene;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A question after its answer: right or not, the right answer, why, and where it says so.
 *
 * @param view what all pages share
 * @param sitting the sitting
 * @param number its number in the sitting
 * @param of how many questions there are
 * @param kind what was to be done with the options
 * @param right whether the answer is right
 * @param critical whether the question is critical
 * @param ask the question
 * @param rows the options, of an order in the right order
 * @param scene the drawing with its spots, null where none was asked about
 * @param why the explanation
 * @param basis whether a paragraph says so or it is good practice
 * @param paragraph where it says so
 * @param ruleSets the rule sets under which it is true
 * @param finished whether all questions are answered
 * @param notice what became of an answer that was not taken, null when there is nothing to tell
 */
public record FeedbackPage(
        View view,
        long sitting,
        int number,
        int of,
        String kind,
        boolean right,
        boolean critical,
        String ask,
        List<Row> rows,
        @Nullable Scene scene,
        String why,
        String basis,
        String paragraph,
        String ruleSets,
        boolean finished,
        @Nullable String notice)
        implements Page {

    /** {@return the heading} */
    public String title() {
        return view.text("lockout.question-page.title", "number", number, "of", of);
    }

    /** {@return whether the rows are the right order} */
    public boolean isOrder() {
        return kind.equals("put-in-order");
    }

    /** {@return the word for right or wrong that the shared texts are under} */
    public String status() {
        return right ? "right" : "wrong";
    }

    /**
     * {@return what the page says, in which words of the trade are looked for} The question before its answer has no such
     * list: what a word means can be what is asked.
     */
    public List<String> sentences() {
        return Stream.concat(Stream.of(ask, why), rows.stream().map(Row::text)).toList();
    }

    /** {@return where to go on} */
    public String next() {
        return "/lockout/" + sitting;
    }

    /** {@return the label of the way on} */
    public String nextLabel() {
        return view.text("lockout.feedback-page." + (finished ? "result" : "next"));
    }

    /**
     * An option.
     *
     * @param text what it says
     * @param right whether it belongs to the right answer, of an order whether it was put in its place
     * @param chosen whether it was chosen
     * @param mark in words: the key and the choice, or where it was put
     */
    public record Row(String text, boolean right, boolean chosen, String mark) {}
}
