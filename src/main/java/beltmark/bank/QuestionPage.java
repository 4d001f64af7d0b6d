package beltmark.bank;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * A question of the bank with its key, in every language.
 *
 * @param view what all pages share
 * @param id the id of the question
 * @param name what it is about
 * @param state whether papers ask it, in words
 * @param facts what is known about it
 * @param languages how it reads
 * @param switches what can be set; none for those who may only look
 * @param settings what was set so far
 * @param operation for the forms
 */
public record QuestionPage(
        View view,
        String id,
        String name,
        String state,
        List<Fact> facts,
        List<Reading> languages,
        List<Lever> switches,
        List<Setting> settings,
        OperationId operation)
        implements Page {

    /**
     * Something known about the question.
     *
     * @param label what
     * @param text its value
     */
    public record Fact(String label, String text) {}

    /**
     * The question in one language.
     *
     * @param tag the language
     * @param name the name of the language
     * @param ask the question
     * @param options the options
     * @param why the explanation
     */
    public record Reading(String tag, String name, String ask, List<Option> options, String why) {}

    /**
     * An option.
     *
     * @param text what it says; of an order with its place
     * @param right whether it belongs to the key
     */
    public record Option(String text, boolean right) {}

    /**
     * A switch.
     *
     * @param id its id
     * @param on whether it is on
     * @param label what the button does
     * @param hint what that means
     */
    public record Lever(String id, boolean on, String label, String hint) {}

    /**
     * A setting so far.
     *
     * @param text what was set, by whom and when
     * @param record the number of its record
     */
    public record Setting(String text, long record) {}
}
