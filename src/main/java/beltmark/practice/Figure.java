package beltmark.practice;

import beltmark.core.grading.Grade;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Blank.WrongAnswer;
import beltmark.core.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * What was typed into one blank and how it was judged, as it is kept.
 *
 * @param blank the blank's id
 * @param typed as typed
 * @param length as read, for a length
 * @param amount as read, in the unit of the blank, for a number
 * @param option as picked; several, an order or a match with blanks between
 * @param verdict the verdict's id
 * @param slip the slip's id, if one was named
 */
public record Figure(
        String blank,
        String typed,
        @Nullable Length length,
        @Nullable Double amount,
        @Nullable String option,
        String verdict,
        @Nullable String slip) {

    static Figure of(String blank, String typed, Grade grade) {
        Answer answer = grade.answer();
        return new Figure(
                blank,
                typed,
                answer instanceof Answer.OfLength own ? own.length() : null,
                answer instanceof Answer.OfNumber own ? Double.valueOf(own.amount()) : null,
                answer == null ? null : Picked.of(answer),
                grade.verdict().id(),
                grade.slip());
    }

    /** {@return what a slip leads to} */
    static Figure ofSlip(String blank, WrongAnswer wrong) {
        return of(blank, "", new Grade(Verdict.SLIP, wrong.answer(), wrong.slip(), null));
    }

    /** {@return the judgement as it was made, not made again} */
    Grade toGrade(Blank asked) {
        return new Grade(Verdict.of(verdict), toAnswer(asked), slip, null);
    }

    private @Nullable Answer toAnswer(Blank asked) {
        if (length != null) {
            return new Answer.OfLength(length);
        }
        if (amount != null) {
            return new Answer.OfNumber(amount);
        }
        return option == null ? null : Picked.read(asked, option);
    }
}
