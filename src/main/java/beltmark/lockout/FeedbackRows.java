package beltmark.lockout;

import beltmark.core.lockout.Match;
import beltmark.core.lockout.Question;
import beltmark.lockout.FeedbackPage.Row;
import beltmark.web.View;
import java.util.List;

/** The options of an answered question with their marks: of a choice as they were shown, of an order in the right order. */
record FeedbackRows(View view, Question question, GivenAnswer answer) {

    private static final String MARK = "lockout.feedback-page.mark.";

    List<Row> of(List<String> shown) {
        return switch (question.kind()) {
            case PUT_IN_ORDER -> question.right().stream().map(this::placed).toList();
            case MATCH ->
                shown.stream()
                        .filter(question.right()::contains)
                        .map(this::matched)
                        .toList();
            case CHOICE, SEVERAL_OF, SPOTS -> shown.stream().map(this::marked).toList();
        };
    }

    /** The right pair, with the target that was given to its row in its stead. */
    private Row matched(String right) {
        boolean chosen = answer.chosen().contains(right);
        return new Row(
                text(right),
                chosen,
                true,
                chosen ? view.text(MARK + "matched") : view.text(MARK + "mismatched", "given", given(right)));
    }

    private String given(String right) {
        List<String> cell = question.getMatch().cells().stream()
                .filter(pairs -> pairs.contains(right))
                .findFirst()
                .orElseThrow();
        String pair =
                cell.stream().filter(answer.chosen()::contains).findFirst().orElseThrow();
        return new Wording(view.words()).part(question, Match.parts(pair).get(1));
    }

    private Row marked(String option) {
        boolean right = question.right().contains(option);
        boolean chosen = answer.chosen().contains(option);
        String mark = (right ? "right" : "not-right") + (chosen ? "-chosen" : "-left");
        return new Row(text(option), right, chosen, right || chosen ? view.text(MARK + mark) : "");
    }

    private Row placed(String option) {
        int right = question.right().indexOf(option) + 1;
        int given = answer.chosen().indexOf(option) + 1;
        String mark = right == given ? view.text(MARK + "in-place") : view.text(MARK + "out-of-place", "place", given);
        return new Row(text(option), right == given, true, mark);
    }

    private String text(String option) {
        return new Wording(view.words()).option(question, option);
    }
}
