package beltmark.practice;

import beltmark.core.grading.Grade;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Verdict;
import beltmark.core.grading.Working.PartWorking;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.practice.PartView.BlankView;
import beltmark.problem.BlankFields;
import beltmark.problem.ProblemWords;
import beltmark.web.View;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes what a page shows of the blanks of one part. */
final class BlankViews {

    private final ProblemWords words;
    private final BlankFields fields;
    private final Attempt attempt;
    private final PartWorking working;
    private final boolean solved;

    BlankViews(View view, Attempt attempt, PartWorking working, boolean solved) {
        this.words = new ProblemWords(view.words());
        this.fields = new BlankFields(view.words(), working.part());
        this.attempt = attempt;
        this.working = working;
        this.solved = solved;
    }

    /** {@return a blank to be filled in; after an unreadable sending with what was sent, else with what was recorded last} */
    BlankView open(Blank blank, PartGrade sent, Map<String, String> typed) {
        Grade grade = sent.find(blank.id()).orElse(null);
        if (grade == null) {
            return recorded(blank);
        }
        String value = typed.getOrDefault(blank.id(), "");
        return new BlankView(fields.field(blank, value, grade.unreadable()), "", null, "", "");
    }

    /** {@return a blank of a part that is done or still to come} */
    BlankView closed(Blank blank) {
        return recorded(blank);
    }

    private BlankView recorded(Blank blank) {
        PartGrade last = working.last();
        Grade grade = last == null ? null : last.find(blank.id()).orElse(null);
        String typed = attempt.typed().getOrDefault(working.part().path(blank), "");
        Answer answer = grade == null ? null : grade.answer();
        return new BlankView(
                fields.field(blank, typed, null),
                answer == null ? "" : words.told(blank, answer),
                grade == null ? null : grade.verdict().id(),
                grade == null ? "" : sentence(grade),
                solved ? words.told(blank, blank.right()) : "");
    }

    private String sentence(Grade grade) {
        if (grade.verdict() == Verdict.WRONG && working.isClosed()) {
            return ""; // nothing is left to go through once more
        }
        @Nullable String slip = grade.slip();
        return slip == null
                ? words.words().say("practice." + grade.verdict().id())
                : words.slip(working.part().id(), slip);
    }
}
