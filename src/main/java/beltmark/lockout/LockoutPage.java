package beltmark.lockout;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The quiz from outside: what it asks for, the way in, and what came of it before.
 *
 * @param view what all pages share
 * @param questions how many questions there are
 * @param needed how many right answers pass
 * @param passPercent the pass mark
 * @param waiting the sitting that waits to be finished, if there is one
 * @param past one's own results, the last one first
 * @param operation for the form that opens a sitting
 */
public record LockoutPage(
        View view,
        int questions,
        int needed,
        int passPercent,
        @Nullable Waiting waiting,
        List<PastRow> past,
        OperationId operation)
        implements Page {

    /** {@return what is asked for} */
    public String lead() {
        return view.text("lockout.page.lead", "questions", questions);
    }

    /** {@return when the quiz is passed} */
    public String rule() {
        return view.text("lockout.page.rule", "questions", questions, "needed", needed, "percent", passPercent);
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
     * @param day when
     * @param score how many right of how many
     * @param status passed or not, in words
     * @param passed whether passed
     * @param address where it can be looked at, null where it was of another version
     */
    public record PastRow(
            String day,
            String score,
            String status,
            boolean passed,
            @Nullable String address) {}
}
