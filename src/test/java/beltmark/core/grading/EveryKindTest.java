package beltmark.core.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.core.measure.Unit;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.MatchBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.NumberBlank.Units;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.SeveralBlank;
import beltmark.core.problem.Tolerance;
import beltmark.core.units.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How numbers, sets, orders and matches are judged, whatever is typed. */
class EveryKindTest {

    private static final NumberBlank FORCE = new NumberBlank(
            "force",
            new Units(Unit.NEWTON, Unit.POUND_FORCE),
            444.82,
            Tolerance.ONE_PERCENT,
            0,
            10_000,
            List.of(new NumberSlip("one-spring", 222.41)),
            own -> Optional.of(own.number("earlier.force", 444.82)));

    private static final SeveralBlank PARTS =
            new SeveralBlank("parts", List.of("a", "b", "c"), Set.of("a", "b"), Map.of(), Map.of("c", "foreign"));

    private static final OrderBlank STEPS = new OrderBlank(
            "steps",
            List.of("c", "a", "b"),
            List.of("a", "b", "c"),
            Map.of("backwards", List.of("c", "b", "a")),
            Map.of());

    private static final MatchBlank ENERGIES = new MatchBlank(
            "energies",
            List.of("weight", "air"),
            List.of("block", "bleed"),
            Map.of("weight", "block", "air", "bleed"),
            Map.of("air:block", "blocked-air"));

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "444.8, MILLIMETRE, RIGHT, -, -",
                "444.8 N, INCH, RIGHT, -, -",
                "100, INCH, RIGHT, -, -",
                "100\u00a0lbf, MILLIMETRE, RIGHT, -, -",
                "'100,0 lb', MILLIMETRE, RIGHT, -, -",
                "222.4, MILLIMETRE, SLIP, one-spring, -",
                "444.8 lbf, INCH, WRONG_UNIT, -, -",
                "445, INCH, WRONG_UNIT, -, -",
                "300, MILLIMETRE, WRONG, -, -",
                "'', INCH, UNREADABLE, -, BLANK",
                "-, INCH, UNREADABLE, -, BLANK",
                "-5, INCH, UNREADABLE, -, NEGATIVE",
                "12 furlongs, INCH, UNREADABLE, -, OTHER_KIND",
                "12 mm, INCH, UNREADABLE, -, OTHER_KIND",
                "cien, INCH, UNREADABLE, -, NOT_A_NUMBER",
                "'1,250', INCH, UNREADABLE, -, AMBIGUOUS_COMMA",
                "99999999999999, INCH, UNREADABLE, -, TOO_LARGE",
                "99999, INCH, UNREADABLE, -, OUT_OF_RANGE"
            })
    void aNumber(
            @Nullable String typed, LengthUnit unit, Verdict verdict, @Nullable String slip, @Nullable Unreadable why) {
        check(FORCE, typed, unit, verdict, slip, why);
    }

    @Test
    void aNumberThatFollowsFromAnOwnOneIsCarried() {
        OwnFigures own = OwnFigures.NONE.with("earlier.force", new Answer.OfNumber(300));
        assertEquals(
                Verdict.CARRIED,
                Grader.grade(FORCE, "300 N", LengthUnit.MILLIMETRE, own).verdict());
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "b a, RIGHT, -, -",
                "'a, b', RIGHT, -, -",
                "a a b, RIGHT, -, -",
                "a b c, SLIP, foreign, -",
                "a, WRONG, -, -",
                "'', UNREADABLE, -, BLANK",
                "a d, UNREADABLE, -, NOT_AN_OPTION",
                "a:1, UNREADABLE, -, NOT_AN_OPTION"
            })
    void aSet(String typed, Verdict verdict, @Nullable String slip, @Nullable Unreadable why) {
        check(PARTS, typed, LengthUnit.INCH, verdict, slip, why);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "a b c, RIGHT, -, -",
                "c:3 a:1 b:2, RIGHT, -, -",
                "c b a, SLIP, backwards, -",
                "b a c, WRONG, -, -",
                "a b, UNREADABLE, -, PLACE_MISSING",
                "a:1 b:2, UNREADABLE, -, PLACE_MISSING",
                "a b b, UNREADABLE, -, PLACE_TWICE",
                "a:1 b:1 c:2, UNREADABLE, -, PLACE_TWICE",
                "a:1 b:2 c:4, UNREADABLE, -, NOT_AN_OPTION",
                "a:1 b:2 c:-3, UNREADABLE, -, NOT_AN_OPTION",
                "'', UNREADABLE, -, BLANK"
            })
    void anOrder(String typed, Verdict verdict, @Nullable String slip, @Nullable Unreadable why) {
        check(STEPS, typed, LengthUnit.INCH, verdict, slip, why);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "weight:block air:bleed, RIGHT, -, -",
                "air:block weight:block, SLIP, blocked-air, -",
                "weight:bleed air:block, WRONG, -, -",
                "weight:block, UNREADABLE, -, PLACE_MISSING",
                "weight air:bleed, UNREADABLE, -, PLACE_MISSING",
                "weight:block weight:bleed air:bleed, UNREADABLE, -, PLACE_TWICE",
                "weight:rope air:bleed, UNREADABLE, -, NOT_AN_OPTION",
                "'', UNREADABLE, -, BLANK"
            })
    void aMatch(String typed, Verdict verdict, @Nullable String slip, @Nullable Unreadable why) {
        check(ENERGIES, typed, LengthUnit.INCH, verdict, slip, why);
    }

    private static void check(
            Blank blank,
            @Nullable String typed,
            LengthUnit unit,
            Verdict verdict,
            @Nullable String slip,
            @Nullable Unreadable why) {
        Grade grade = Grader.grade(blank, typed, unit, OwnFigures.NONE);
        assertEquals(verdict, grade.verdict());
        assertEquals(slip, grade.slip());
        assertEquals(why, grade.unreadable());
    }
}
