package beltmark.bank;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The bank of questions as a list.
 *
 * @param view what all pages share
 * @param filters what the list can be narrowed to
 * @param counts how many questions there are under each heading
 * @param rows the questions
 * @param rules the rule sets, chosen or not
 * @param mayChange whether the visitor may change anything
 * @param refused whether a choice of rule sets was not taken
 * @param operation for the form
 */
public record BankPage(
        View view,
        List<Filter> filters,
        List<Count> counts,
        List<Row> rows,
        List<Rules> rules,
        boolean mayChange,
        boolean refused,
        OperationId operation)
        implements Page {

    /** {@return how many questions are listed} */
    public String found() {
        return view.text("bank.page.found", "questions", rows.size());
    }

    /**
     * A filter.
     *
     * @param name the name of its field
     * @param label its label
     * @param choices what can be chosen
     */
    public record Filter(String name, String label, List<Choice> choices) {}

    /**
     * A choice of a filter.
     *
     * @param value what is sent
     * @param text what it says
     * @param chosen whether it is chosen
     */
    public record Choice(String value, String text, boolean chosen) {}

    /**
     * A number of questions.
     *
     * @param heading of what
     * @param all how many in the bank
     * @param asked how many papers may ask now
     */
    public record Count(String heading, long all, long asked) {}

    /**
     * A question.
     *
     * @param id its id
     * @param name what it is about
     * @param topic its topic
     * @param kind its kind
     * @param mark how well its source is known
     * @param rules its rule sets
     * @param state whether it is asked, in words
     * @param stateId the same for the style sheet
     */
    public record Row(
            String id,
            String name,
            String topic,
            String kind,
            String mark,
            String rules,
            String state,
            String stateId) {}

    /**
     * A rule set.
     *
     * @param id its id
     * @param name its name
     * @param chosen whether the site works under it
     */
    public record Rules(String id, String name, boolean chosen) {}
}
