package beltmark.practice;

import beltmark.core.grading.Grade;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * What was typed into one blank and how it was judged, as it is kept.
 *
 * @param blank the blank's id
 * @param typed as typed
 * @param length as read, for a length
 * @param option as picked, for a choice
 * @param verdict the verdict's id
 * @param slip the slip's id, if one was named
 */
public record Figure(
        String blank,
        String typed,
        @Nullable Length length,
        @Nullable String option,
        String verdict,
        @Nullable String slip) {

    static Figure of(String blank, String typed, Grade grade) {
        Answer answer = grade.answer();
        return new Figure(
                blank,
                typed,
                answer instanceof Answer.OfLength own ? own.length() : null,
                answer instanceof Answer.OfChoice own ? own.option() : null,
                grade.verdict().id(),
                grade.slip());
    }

    /** {@return the judgement as it was made, not made again} */
    Grade toGrade() {
        Answer answer =
                option != null ? new Answer.OfChoice(option) : length == null ? null : new Answer.OfLength(length);
        return new Grade(Verdict.of(verdict), answer, slip, null);
    }
}
