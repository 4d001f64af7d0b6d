package beltmark.lockout;

import beltmark.drawing.conveyor.Scene;
import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One question, waiting for its answer. It holds nothing that depends on the key.
 *
 * @param view what all pages share
 * @param address where the answer is sent
 * @param number its number in the sitting
 * @param of how many questions there are
 * @param kind what to do with the options
 * @param ask the question
 * @param rows the options in the order of the sitting; none for a match
 * @param matches the rows of a match
 * @param headings the headings of the columns of a match
 * @param scene the drawing with its spots, null where none is asked about
 * @param error why the question is not answered yet, null at first
 * @param operation for the form
 */
public record QuestionPage(
        View view,
        String address,
        int number,
        int of,
        String kind,
        String ask,
        List<Row> rows,
        List<MatchRow> matches,
        List<String> headings,
        @Nullable Scene scene,
        @Nullable String error,
        OperationId operation)
        implements Page {

    /** {@return the heading} */
    public String title() {
        return view.text("lockout.question-page.title", "number", number, "of", of);
    }

    /** {@return how to answer this kind of question} */
    public String hint() {
        return view.text("lockout.question-page.hint." + kind);
    }

    /** {@return whether places are asked for} */
    public boolean isOrder() {
        return kind.equals("put-in-order");
    }

    /** {@return whether more than one option may be chosen} */
    public boolean isSeveral() {
        return kind.equals("several-of") || kind.equals("spots");
    }

    /** {@return the places there are} */
    public List<Integer> places() {
        return IntStream.rangeClosed(1, rows.size()).boxed().toList();
    }

    /**
     * An option.
     *
     * @param position its position on the page from 1, which is all the form sends
     * @param text what it says
     * @param chosen whether it was chosen when the form was sent before
     * @param place the place it was given before, as typed
     */
    public record Row(int position, String text, boolean chosen, String place) {}

    /**
     * A row of a match.
     *
     * @param text what it says
     * @param cells what is given to it, column by column
     */
    public record MatchRow(String text, List<Cell> cells) {}

    /**
     * What a row is given from one column.
     *
     * @param name the name of the field
     * @param heading the heading of the column
     * @param targets what can be chosen
     * @param chosen the position chosen before, as typed
     */
    public record Cell(String name, String heading, List<String> targets, String chosen) {}
}
