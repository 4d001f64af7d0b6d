package beltmark.core.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.Sample;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.solution.Slip;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import beltmark.core.units.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GraderTest {

    private static final LengthSpan PLAUSIBLE = new LengthSpan(Sample.inches("2 1/2"), Sample.inches("5 1/2"));
    private static final List<Slip> SLIPS = List.of(
            new Slip("washer-left-out", Sample.inches("3 5/8")), new Slip("row-below", Sample.inches("3 9/16")));

    @ParameterizedTest
    @CsvSource({
        "3 3/4, INCH, RIGHT, ",
        "3 25/32, INCH, RIGHT, ",
        "95.25, MILLIMETRE, RIGHT, ",
        "95, MILLIMETRE, RIGHT, ",
        "95.25 mm, INCH, RIGHT, ",
        "3 3/4 in, MILLIMETRE, RIGHT, ",
        "3 5/8, INCH, SLIP, washer-left-out",
        "92.1, MILLIMETRE, SLIP, washer-left-out",
        "3 9/16, INCH, SLIP, row-below",
        "3 13/16, INCH, ONE_OFF, ",
        "4, INCH, WRONG, "
    })
    void judgesALength(String typed, LengthUnit unit, Verdict verdict, String slip) {
        Grade grade = Grader.grade(blank(Carry.none()), typed, unit, OwnFigures.NONE);
        assertEquals(verdict, grade.verdict());
        assertEquals(slip, grade.slip());
    }

    @Test
    void midwayBetweenTwoSlipsNoneIsNamed() {
        Grade grade = Grader.grade(blank(Carry.none()), "3 19/32", LengthUnit.INCH, OwnFigures.NONE);
        assertEquals(Verdict.AMBIGUOUS, grade.verdict());
    }

    @ParameterizedTest
    @CsvSource({
        "'', INCH, BLANK",
        "1/0, INCH, ZERO_DENOMINATOR",
        "4, MILLIMETRE, OTHER_UNIT",
        "97, INCH, OTHER_UNIT",
        "4 mm, INCH, OTHER_UNIT",
        "40, INCH, OUT_OF_RANGE",
        "1000, MILLIMETRE, OUT_OF_RANGE"
    })
    void asksAgainForWhatCannotBeAnAnswer(String typed, LengthUnit unit, Unreadable why) {
        Grade grade = Grader.grade(blank(Carry.none()), typed, unit, OwnFigures.NONE);
        assertEquals(Verdict.UNREADABLE, grade.verdict());
        assertEquals(why, grade.unreadable());
    }

    @ParameterizedTest
    @CsvSource({"3 3/4, MILLIMETRE", "3 3/4 mm, INCH", "95.25, INCH", "95.25 in, MILLIMETRE"})
    void theRightNumberInTheWrongUnitIsToldApart(String typed, LengthUnit unit) {
        Grade grade = Grader.grade(blank(Carry.none()), typed, unit, OwnFigures.NONE);
        assertEquals(Verdict.WRONG_UNIT, grade.verdict());
    }

    @Test
    void aFigureThatFollowsFromAnOwnWrongOneIsCarried() {
        Carry<Length> carry =
                own -> Optional.of(own.length("earlier.one", Length.ZERO).plus(Sample.inches("1")));
        OwnFigures own = OwnFigures.NONE.with("earlier.one", new Answer.OfLength(Sample.inches("3")));
        assertEquals(
                Verdict.CARRIED,
                Grader.grade(blank(carry), "4", LengthUnit.INCH, own).verdict());
    }

    @Test
    void carriedIsLookedForBeforeASlip() {
        Carry<Length> carry = own -> Optional.of(Sample.inches("3 5/8"));
        assertEquals(
                Verdict.CARRIED,
                Grader.grade(blank(carry), "3 5/8", LengthUnit.INCH, OwnFigures.NONE)
                        .verdict());
    }

    @Test
    void rightIsLookedForFirst() {
        Carry<Length> carry = own -> Optional.of(Sample.inches("3 3/4"));
        assertEquals(
                Verdict.RIGHT,
                Grader.grade(blank(carry), "3 3/4", LengthUnit.INCH, OwnFigures.NONE)
                        .verdict());
    }

    @ParameterizedTest
    @CsvSource({"up, RIGHT, ", "down, SLIP, upside-down", "sideways, WRONG, "})
    void judgesAChoice(String picked, Verdict verdict, String slip) {
        ChoiceBlank blank =
                new ChoiceBlank("way", List.of("up", "down", "sideways"), "up", Map.of("down", "upside-down"));
        Grade grade = Grader.grade(blank, picked, LengthUnit.INCH, OwnFigures.NONE);
        assertEquals(verdict, grade.verdict());
        assertEquals(slip, grade.slip());
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "null",
            value = {"null, BLANK", "' ', BLANK", "left, NOT_AN_OPTION"})
    void asksAgainForWhatIsNoOption(String picked, Unreadable why) {
        ChoiceBlank blank = new ChoiceBlank("way", List.of("up", "down"), "up", Map.of());
        assertEquals(
                why,
                Grader.grade(blank, picked, LengthUnit.INCH, OwnFigures.NONE).unreadable());
    }

    private static LengthBlank blank(Carry<Length> carry) {
        Length reading = Graduation.THIRTY_SECOND_INCH.step();
        return new LengthBlank("both", Sample.inches("3 3/4"), reading, PLAUSIBLE, SLIPS, carry);
    }
}
