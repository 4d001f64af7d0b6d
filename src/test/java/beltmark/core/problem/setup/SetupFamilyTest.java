package beltmark.core.problem.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.grading.Grade;
import beltmark.core.grading.Grader;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.setup.Orientation;
import beltmark.core.solution.Slip;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every shipped family of the set-up, over many codes. */
class SetupFamilyTest {

    private static final int CODES = 1_000;

    static Stream<ProblemFamily> families() {
        return Sample.content().families().stream().filter(SetupFamily.class::isInstance);
    }

    @ParameterizedTest
    @MethodSource("families")
    void theSameCodeGivesTheSameProblem(ProblemFamily family) {
        ProblemCode code = new ProblemCode("7K3M1Q");
        assertEquals(Sample.situation(family.problem(code)), Sample.situation(family.problem(code)));
    }

    @ParameterizedTest
    @MethodSource("families")
    void nearlyEveryCodeGivesAnotherProblem(ProblemFamily family) {
        long distinct = Sample.codes(CODES)
                .map(code -> Sample.situation(family.problem(code)))
                .distinct()
                .count();
        assertTrue(distinct > 0.99 * CODES, distinct + " of " + CODES);
    }

    @ParameterizedTest
    @MethodSource("families")
    void theRightAnswerIsGradedRightInBothUnits(ProblemFamily family) {
        forEachLength(family, blank -> {
            assertEquals(
                    Verdict.RIGHT,
                    typed(blank, blank.rightLength(), Graduation.SIXTEENTH_INCH).verdict());
            assertEquals(
                    Verdict.RIGHT,
                    typed(blank, blank.rightLength(), Graduation.MILLIMETRE).verdict());
        });
    }

    @ParameterizedTest
    @MethodSource("families")
    void aReadingToTheNearestMillimetreIsRight(ProblemFamily family) {
        forEachLength(family, blank -> {
            Length rounded = blank.rightLength().roundedTo(Graduation.MILLIMETRE);
            assertEquals(
                    Verdict.RIGHT, typed(blank, rounded, Graduation.MILLIMETRE).verdict());
        });
    }

    @ParameterizedTest
    @MethodSource("families")
    void oneSixteenthOffIsNotRight(ProblemFamily family) {
        forEachLength(family, blank -> {
            Length off = blank.rightLength().plus(Length.ofSixteenths(1));
            assertNotEquals(
                    Verdict.RIGHT, typed(blank, off, Graduation.SIXTEENTH_INCH).verdict());
        });
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyDeclaredSlipIsNamed(ProblemFamily family) {
        forEachLength(family, blank -> {
            for (Slip slip : blank.slips()) {
                Grade grade = typed(blank, slip.value(), Graduation.SIXTY_FOURTH_INCH);
                assertEquals(slip.id(), grade.slip());
            }
        });
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void theOrientationDrillMeetsEveryKindOfPlace(Place place) {
        assertTrue(Sample.codes(CODES)
                .map(code -> Sample.family("orientation").problem(code))
                .anyMatch(problem -> Place.of(Sample.situation(problem).orientation()) == place));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench", "mount-marks"})
    void whereAMountMarkIsAskedSomethingFits(String family) {
        assertTrue(Sample.codes(CODES)
                .map(code -> Sample.family(family).problem(code))
                .noneMatch(problem -> Place.of(Sample.situation(problem).orientation()) == Place.NOTHING_FITS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"overslung", "underslung"})
    void ownBeltMarkAndOwnOrientationCarryIntoTheMountMark(String way) {
        Sample.codes(CODES).map(code -> Sample.family("bench").problem(code)).forEach(problem -> {
            Length ownMark = Sample.situation(problem).beltMarks().left().plus(Length.ofSixteenths(5));
            OwnFigures own = OwnFigures.NONE
                    .with("belt-mark.left", new Answer.OfLength(ownMark))
                    .with("orientation.way", new Answer.OfChoice(way));
            Length offset = Sample.situation(problem)
                    .card()
                    .mountOffset(
                            Sample.situation(problem).tip(),
                            Orientation.valueOf(way.toUpperCase(java.util.Locale.ROOT)));
            Length carried = ownMark.plus(offset);
            LengthBlank blank = (LengthBlank) problem.parts().get(2).blanks().get(0);
            Verdict expected =
                    carried.isWithin(blank.tolerance(), blank.rightLength()) ? Verdict.RIGHT : Verdict.CARRIED;
            String typed = LengthPrinter.print(carried, Graduation.SIXTEENTH_INCH);
            assertEquals(
                    expected, Grader.grade(blank, typed, LengthUnit.INCH, own).verdict());
        });
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyOptionIsGraded(ProblemFamily family) {
        Sample.codes(200)
                .flatMap(code -> family.problem(code).parts().stream())
                .flatMap(part -> part.blanks().stream())
                .filter(ChoiceBlank.class::isInstance)
                .map(ChoiceBlank.class::cast)
                .forEach(blank -> assertEquals(Set.of(Verdict.RIGHT, Verdict.SLIP), verdicts(blank)));
    }

    private static Set<Verdict> verdicts(ChoiceBlank blank) {
        return blank.options().stream()
                .map(option -> Grader.grade(blank, option, LengthUnit.INCH, OwnFigures.NONE)
                        .verdict())
                .collect(Collectors.toSet());
    }

    private static Grade typed(LengthBlank blank, Length length, Graduation graduation) {
        return Grader.grade(blank, LengthPrinter.print(length, graduation), LengthUnit.INCH, OwnFigures.NONE);
    }

    private static void forEachLength(ProblemFamily family, java.util.function.Consumer<LengthBlank> check) {
        Sample.codes(CODES)
                .map(family::problem)
                .forEach(problem -> lengths(problem).forEach(check));
    }

    private static Stream<LengthBlank> lengths(Problem problem) {
        Stream<Blank> blanks = problem.parts().stream().flatMap(part -> part.blanks().stream());
        return blanks.filter(LengthBlank.class::isInstance).map(LengthBlank.class::cast);
    }
}
