package beltmark.trainee;

import beltmark.core.grading.Grade;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.units.LengthUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;

/**
 * Trainees who each have one slip and work every part that knows it that way nine times in ten, else rightly; what they
 * get by it they read off or round with an error of up to half a tolerance. Two chances a day, six in all.
 */
public final class KnownSlip {

    private static final double USES_IT = 0.9;
    private static final int CHANCES = 6;
    private static final int A_DAY = 2;
    private static final int PROBLEMS = 400;
    private static final LocalDate START = LocalDate.of(2026, 3, 2);

    private final ProblemFamily family;
    private final Chance chance;
    private Result result = Result.NONE;

    private KnownSlip(ProblemFamily family, Chance chance) {
        this.family = family;
        this.chance = chance;
    }

    /**
     * What came of it.
     *
     * @param slips how many slips the family was seen to know
     * @param named of the answers worked with the slip, those at which the grader named it
     * @param confirmed of the trainees, those of whom it became a confirmed habit
     * @param accused of the confirmed habits, those that the trainee does not have
     */
    public record Result(int slips, Share named, Share confirmed, Share accused) {

        /** Nobody tried. */
        public static final Result NONE = new Result(0, Share.NONE, Share.NONE, Share.NONE);

        /** {@return both together} */
        public Result and(Result other) {
            return new Result(
                    slips + other.slips,
                    named.and(other.named),
                    confirmed.and(other.confirmed),
                    accused.and(other.accused));
        }
    }

    /** {@return what comes of so many trainees for each slip of a family} */
    public static Result of(ProblemFamily family, int trainees, SplittableRandom random) {
        KnownSlip run = new KnownSlip(family, new Chance(random));
        TreeSet<String> habits = new TreeSet<>();
        for (int i = 0; i < PROBLEMS; i++) {
            run.problem(i).parts().forEach(part -> habits.addAll(slips(part)));
        }
        for (String habit : habits) {
            for (int i = 0; i < trainees; i++) {
                run.trainee(habit, i * 1_000);
            }
        }
        return run.result.and(new Result(habits.size(), Share.NONE, Share.NONE, Share.NONE));
    }

    private static List<String> slips(Part part) {
        return part.blanks().stream()
                .flatMap(blank -> blank.wrongAnswers().stream())
                .map(wrong -> part.id() + "." + wrong.slip())
                .toList();
    }

    private Problem problem(int number) {
        return family.problem(new ProblemCode("T" + number));
    }

    private void trainee(String habit, int firstProblem) {
        Habits habits = new Habits();
        int chances = 0;
        LocalDate day = START;
        for (int i = 0; i < PROBLEMS && chances < CHANCES; i++) {
            for (Part part : problem(firstProblem + i).parts()) {
                if (chances < CHANCES && slips(part).contains(habit)) {
                    day = START.plusDays(chances++ / A_DAY);
                    habits.count(part, answer(part, habit), day);
                }
            }
        }
        List<String> confirmed = habits.confirmed(day);
        Share accused = Share.NONE;
        for (String one : confirmed) {
            accused = accused.and(!one.equals(habit));
        }
        result = result.and(new Result(0, Share.NONE, Share.NONE.and(confirmed.contains(habit)), accused));
    }

    private PartGrade answer(Part part, String habit) {
        Map<String, String> typed = Typing.right(part);
        if (!chance.happens(USES_IT)) {
            return PartGrade.of(part, typed, LengthUnit.MILLIMETRE, OwnFigures.NONE);
        }
        String slip = habit.substring(part.id().length() + 1);
        List<Blank> slipped = part.blanks().stream()
                .filter(blank -> wrong(blank, slip).isPresent())
                .toList();
        for (Blank blank : slipped) {
            Answer answer = chance.blurred(blank, wrong(blank, slip).orElseThrow());
            typed.put(blank.id(), Typing.of(blank, answer));
        }
        PartGrade grades = PartGrade.of(part, typed, LengthUnit.MILLIMETRE, OwnFigures.NONE);
        slipped.forEach(blank -> count(slip, grades.find(blank.id()).orElseThrow()));
        return grades;
    }

    /** A slip that shows a second time, as a carried figure, is not to be named again. */
    private void count(String slip, Grade grade) {
        if (grade.verdict() != Verdict.CARRIED) {
            Share named = Share.NONE.and(slip.equals(grade.slip()));
            result = result.and(new Result(0, named, Share.NONE, Share.NONE));
        }
    }

    private static Optional<Answer> wrong(Blank blank, String slip) {
        return blank.wrongAnswers().stream()
                .filter(wrong -> wrong.slip().equals(slip))
                .map(Blank.WrongAnswer::answer)
                .findFirst();
    }
}
