package beltmark.lockout;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The quiz from outside: the papers there are, the way in, and what came of it before.
 *
 * @param view what all pages share
 * @param papers the papers that can be sat
 * @param past one's own results, the last one first
 * @param mayReadBank whether the visitor may look at the bank of questions
 */
public record LockoutPage(View view, List<PaperRow> papers, List<PastRow> past, boolean mayReadBank) implements Page {

    /**
     * A paper.
     *
     * @param quiz the id of the quiz
     * @param title its name
     * @param whom for whom it is
     * @param lead what is asked for; empty when there are too few questions under the site's rule sets
     * @param rule when it is passed
     * @param waiting the sitting that waits to be finished, if there is one
     * @param goOn the label of the way on to it
     * @param operation for the form that opens it
     */
    public record PaperRow(
            String quiz,
            String title,
            String whom,
            String lead,
            String rule,
            @Nullable Waiting waiting,
            String goOn,
            OperationId operation) {

        /** {@return whether it can be opened} */
        public boolean canOpen() {
            return waiting == null && !lead.isEmpty();
        }
    }

    /**
     * A sitting that waits.
     *
     * @param sitting its number
     * @param next the question to go on at
     */
    public record Waiting(long sitting, int next) {}

    /**
     * A finished sitting.
     *
     * @param name the name of the paper
     * @param day when
     * @param score how many right of how many
     * @param status passed or not, in words
     * @param passed whether passed
     * @param address where it can be looked at
     */
    public record PastRow(String name, String day, String score, String status, boolean passed, String address) {}
}
