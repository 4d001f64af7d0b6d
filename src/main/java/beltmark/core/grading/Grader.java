package beltmark.core.grading;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.MatchBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.SeveralBlank;
import beltmark.core.units.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * Judges answers. Right is looked for first, then a carried figure, then a slip: somebody whose earlier slip shows again
 * in a later part has worked that part correctly and is not told off twice. After the slips come the right number with the
 * wrong unit and an answer one graduation off; what is left is wrong.
 */
public final class Grader {

    private Grader() {}

    /**
     * Judges what was typed into one blank; never throws.
     *
     * @param blank the blank
     * @param typed what was typed, or the options picked; null when the field was missing. Several options, the items of
     *     an order and the pairs {@code thing:partner} of a match follow each other with blanks or commas between
     * @param unit the unit of a length typed without one; it also tells which units a number is in
     * @param own the person's own earlier figures
     * @return the judgement
     */
    public static Grade grade(Blank blank, @Nullable String typed, LengthUnit unit, OwnFigures own) {
        if (blank instanceof LengthBlank length) {
            return LengthGrader.grade(length, typed, unit, own);
        }
        if (blank instanceof NumberBlank number) {
            return NumberGrader.grade(number, typed, unit, own);
        }
        if (blank instanceof ChoiceBlank choice) {
            return grade(choice, typed, own);
        }
        Marks marks = Marks.read(typed);
        if (blank instanceof SeveralBlank several) {
            return MarksGrader.grade(several, marks);
        }
        return blank instanceof OrderBlank order
                ? MarksGrader.grade(order, marks)
                : MarksGrader.grade((MatchBlank) blank, marks);
    }

    private static Grade grade(ChoiceBlank blank, @Nullable String typed, OwnFigures own) {
        if (typed == null || typed.isBlank()) {
            return Grade.unreadable(Unreadable.BLANK);
        }
        String option = typed.strip();
        if (!blank.options().contains(option)) {
            return Grade.unreadable(Unreadable.NOT_AN_OPTION);
        }
        Answer answer = new Answer.OfChoice(option);
        if (option.equals(blank.rightOption())) {
            return Grade.of(Verdict.RIGHT, answer);
        }
        if (blank.carry().from(own).filter(option::equals).isPresent()) {
            return Grade.of(Verdict.CARRIED, answer);
        }
        String slip = blank.slips().get(option);
        return slip == null ? Grade.of(Verdict.WRONG, answer) : Grade.slip(slip, answer);
    }
}
