package beltmark.trainee;

import beltmark.core.grading.Grade;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.units.LengthUnit;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Trainees without any method, whose wrong answers come about by chance: how often a slip is laid to them. A single value
 * meets a slip as often as the bands of the slips fill the room around the right value, and no grader can tell it apart
 * from a real slip; that is why only a repeated slip counts as a habit.
 */
public final class Stray {

    private static final int PROBLEMS = 6;
    private static final int A_DAY = 2;
    private static final LocalDate START = LocalDate.of(2026, 3, 2);

    private final Chance chance;
    private Result result = Result.NONE;

    private Stray(Chance chance) {
        this.chance = chance;
    }

    /**
     * How often a slip was named that nobody had.
     *
     * @param values at wrong lengths and numbers
     * @param sets at wrong orders, sets and matches
     * @param choices at wrong choices, of which every one may have its slip
     * @param habits of the trainees, those who were said to have any habit after six problems, choices left out
     */
    public record Result(Share values, Share sets, Share choices, Share habits) {

        /** Nobody tried. */
        public static final Result NONE = new Result(Share.NONE, Share.NONE, Share.NONE, Share.NONE);

        /** {@return both together} */
        public Result and(Result other) {
            return new Result(
                    values.and(other.values),
                    sets.and(other.sets),
                    choices.and(other.choices),
                    habits.and(other.habits));
        }
    }

    /** {@return what comes of so many trainees with six problems each} */
    public static Result of(ProblemFamily family, int trainees, SplittableRandom random) {
        Stray run = new Stray(new Chance(random));
        for (int i = 0; i < trainees; i++) {
            run.trainee(family, i * PROBLEMS);
        }
        return run.result;
    }

    private void trainee(ProblemFamily family, int firstProblem) {
        Habits habits = new Habits();
        LocalDate day = START;
        boolean counted = false;
        for (int i = 0; i < PROBLEMS; i++) {
            day = START.plusDays(i / A_DAY);
            for (Part part :
                    family.problem(new ProblemCode("S" + (firstProblem + i))).parts()) {
                PartGrade grades = answer(part);
                if (part.blanks().stream().noneMatch(ChoiceBlank.class::isInstance)) {
                    counted = true;
                    habits.count(part, grades, day);
                }
            }
        }
        if (counted) {
            Share accused = Share.NONE.and(!habits.confirmed(day).isEmpty());
            result = result.and(new Result(Share.NONE, Share.NONE, Share.NONE, accused));
        }
    }

    private PartGrade answer(Part part) {
        Map<String, String> typed = new HashMap<>();
        for (Blank blank : part.blanks()) {
            Answer answer = chance.stray(blank);
            typed.put(blank.id(), Typing.of(blank, answer));
        }
        PartGrade grades = PartGrade.of(part, typed, LengthUnit.MILLIMETRE, OwnFigures.NONE);
        part.blanks().forEach(blank -> count(blank, grades.find(blank.id()).orElseThrow()));
        return grades;
    }

    private void count(Blank blank, Grade grade) {
        if (grade.verdict().isAccepted() || grade.verdict() == Verdict.UNREADABLE) {
            return;
        }
        Share named = Share.NONE.and(grade.verdict() == Verdict.SLIP);
        boolean value = blank instanceof LengthBlank || blank instanceof NumberBlank;
        boolean choice = blank instanceof ChoiceBlank;
        result = result.and(new Result(
                value ? named : Share.NONE,
                value || choice ? Share.NONE : named,
                choice ? named : Share.NONE,
                Share.NONE));
    }
}
