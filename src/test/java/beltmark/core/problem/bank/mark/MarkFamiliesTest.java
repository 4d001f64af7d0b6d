package beltmark.core.problem.bank.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.geometry.Cup;
import beltmark.core.geometry.Skew;
import beltmark.core.geometry.SlopingBelt;
import beltmark.core.measure.InchSum;
import beltmark.core.measure.TapeReading;
import beltmark.core.problem.Answer;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.solution.Slip;
import beltmark.core.units.Angle;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the families about marks take for right, against sums worked by hand and rules of the trade. */
class MarkFamiliesTest {

    static Stream<Problem> problems(String family) {
        return Sample.codes(1_000).map(Sample.family(family)::problem);
    }

    static LengthBlank blank(Problem problem, String part, String blank) {
        return part(problem, part).blanks().stream()
                .filter(one -> one.id().equals(blank))
                .map(LengthBlank.class::cast)
                .findFirst()
                .orElseThrow();
    }

    static Part part(Problem problem, String id) {
        return problem.parts().stream()
                .filter(part -> part.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Holding the one-inch line and taking the inch off again is common practice; no published source. */
    @ParameterizedTest
    @CsvSource({
        "23 3/16 in, SIXTEENTH_INCH, 0 in, 23 3/16 in",
        "23 3/16 in, SIXTEENTH_INCH, 1 in, 22 3/16 in",
        "17 9/32 in, THIRTY_SECOND_INCH, 1 in, 16 9/32 in",
        "754 mm, MILLIMETRE, 100 mm, 654 mm"
    })
    void takesOffTheLineTheTapeWasHeldBy(String at, Graduation tape, String heldBy, String distance) {
        assertEquals(
                Sample.inches(distance),
                TapeReading.of(Sample.inches(at), tape, Sample.inches(heldBy)).result());
    }

    @Test
    void everyTapeIsDrawn() {
        Set<Graduation> tapes = problems("tape-reading")
                .map(problem -> ((TapeScene) problem.scene()).tape())
                .collect(Collectors.toSet());
        assertEquals(Set.of(Graduation.SIXTEENTH_INCH, Graduation.THIRTY_SECOND_INCH, Graduation.MILLIMETRE), tapes);
    }

    /** Half a graduation is the reading error of a tape (NIST Handbook 44, s. 10.3, reads to the nearer graduation). */
    @Test
    void aReadingMayBeHalfAGraduationOff() {
        problems("tape-reading").forEach(problem -> {
            Length step = ((TapeScene) problem.scene()).tape().step();
            assertEquals(step.times(0.5), blank(problem, "tape-sound", "mark").tolerance());
        });
    }

    @ParameterizedTest
    @CsvSource({
        // added again in the head; no other source
        "31 3/16 in, 6 15/16 in, 38 1/8 in",
        "20 1/4 in, 6 1/4 in, 26 1/2 in",
        "29 7/8 in, 4 1/16 in, 33 15/16 in"
    })
    void addsInchFractions(String first, String second, String sum) {
        assertEquals(
                Sample.inches(sum),
                InchSum.plus(Sample.inches(first), Sample.inches(second)).result());
    }

    @ParameterizedTest
    @CsvSource({
        // added again in the head; no other source
        "24 1/2 in, 6 13/16 in, 17 11/16 in",
        "24 7/8 in, 3 15/16 in, 20 15/16 in",
        "30 3/4 in, 5 1/4 in, 25 1/2 in"
    })
    void takesOffInchFractions(String first, String second, String difference) {
        assertEquals(
                Sample.inches(difference),
                InchSum.minus(Sample.inches(first), Sample.inches(second)).result());
    }

    /** 3/4 and 5/8 added straight across make 8/12: the slip of the school room, here 2 + 3 and 2/3 of an inch. */
    @Test
    void knowsFractionsAddedStraightAcross() {
        Slip slip = FractionSlips.sum(Sample.inches("2 3/4"), Sample.inches("3 5/8")).stream()
                .filter(one -> one.id().equals("straight-across"))
                .findFirst()
                .orElseThrow();
        assertEquals(5 + 8 / 12.0, slip.value().inches(), 1e-6);
    }

    @Test
    void theMiddleIsAsFarFromEitherWall() {
        problems("fraction-sums").forEach(problem -> {
            FractionScene scene = (FractionScene) problem.scene();
            Answer right = blank(problem, "fraction-half", "inches").right();
            Length half = ((Answer.OfLength) right).length();
            assertEquals(scene.width(), half.plus(half));
            assertTrue(half.roundedTo(Graduation.SIXTEENTH_INCH).equals(half));
        });
    }

    /** The formulas and numbers of a second program for the same mechanics, worked from own free-body sketches. */
    @Test
    void aLevelPoleUnderATiltedBeltLeavesBladeTimesTangent() {
        // 1100 mm of blade, 1 degree: 19.201 mm
        double gap = SlopingBelt.levelAgainstTilt(Length.ofMillimetres(1100), Angle.ofDegrees(1))
                .result()
                .millimetres();
        assertEquals(19.201, gap, 0.0005);
    }

    /** Striking the line on the flattened belt is common practice; no published source. */
    @Test
    void theCupIsAddedToTheHangingEdge() {
        assertEquals(
                Sample.inches("27 15/16 in"),
                Cup.beltMark(Sample.inches("27 3/16 in"), Sample.inches("3/4 in"))
                        .result());
    }

    @Test
    void anOwnBeltMarkCarriesToTheMountMark() {
        problems("belt-mark-cup").limit(200).forEach(problem -> {
            CupScene scene = (CupScene) problem.scene();
            Length own = scene.edges().left();
            OwnFigures figures = OwnFigures.NONE.with("cup-belt-mark.left", new Answer.OfLength(own));
            LengthBlank blank = blank(problem, "cup-mount-mark", "left");
            assertEquals(
                    own.plus(scene.mounting().offset()),
                    blank.carry().from(figures).orElseThrow());
        });
    }

    @Test
    void theBeltMarkMayBeTappedOnTheDrawing() {
        problems("belt-mark-cup")
                .limit(50)
                .forEach(problem ->
                        assertTrue(blank(problem, "cup-belt-mark", "right").onDrawing()));
    }

    /** A square distance of 5 in measured plumb at 10 degrees is 4.9240 in square: a second program's figure. */
    @Test
    void plumbIsTheCosineOnASlope() {
        double got = SlopingBelt.of(Sample.inches("5 in"), Angle.ofDegrees(10))
                .result()
                .gotIfPlumb()
                .inches();
        assertEquals(4.9240, got, 0.00005);
    }

    /** On a belt that rises, the plumb line from the upper bolt falls down the slope from the square one. */
    @Test
    void theBoltMovesAgainstTheLeanOfThePlumbLine() {
        problems("bracket-square").forEach(problem -> {
            BracketScene scene = (BracketScene) problem.scene();
            ChoiceBlank which =
                    (ChoiceBlank) part(problem, "bracket-bolt").blanks().get(0);
            String right = scene.upperRight() ? "lower-bolt-up-slope" : "upper-bolt-down-slope";
            assertEquals(right, which.rightOption());
        });
    }

    /** Pythagoras: the side is ahead by what makes the squares of the diagonals differ by four times its product with A. */
    @Test
    void diagonalsGiveHowFarOneSideIsAhead() {
        problems("bracket-square").forEach(problem -> {
            BracketScene.Marks marks = ((BracketScene) problem.scene()).marks();
            double out = ((Answer.OfLength)
                            blank(problem, "bracket-diagonals", "out").right())
                    .length()
                    .millimetres();
            double d1 = marks.first().millimetres();
            double d2 = marks.second().millimetres();
            assertEquals(Math.abs(d1 * d1 - d2 * d2), 4 * marks.along().millimetres() * out, 0.01);
        });
    }

    /** Ten millimetres out of line over 1560 mm leads 7.0511 mm on 1100 mm of blade: a second program's figure. */
    @Test
    void theBladeLeadsByItsShareOfTheSpan() {
        double lead = Skew.of(Length.ofMillimetres(10), Length.ofMillimetres(1560), Length.ofMillimetres(1100))
                .result()
                .lead()
                .millimetres();
        assertEquals(7.0511, lead, 0.00005);
    }

    /** Blade 25 mm off centre, 40 mm of mistracking, belt 100 mm wider: 15 mm beyond the edge, by hand. */
    @Test
    void theMarginIsHalfTheSpareBeltLessOffsetAndWandering() {
        problems("pole-length").forEach(problem -> {
            PoleScene scene = (PoleScene) problem.scene();
            double spare =
                    scene.widths().belt().millimetres() - scene.widths().blade().millimetres();
            double margin = spare / 2
                    - scene.offsets().blade().abs().millimetres()
                    - scene.offsets().mistracking().millimetres();
            Answer worst = blank(problem, "pole-margin", "worst").right();
            assertEquals(Math.abs(margin), ((Answer.OfLength) worst).length().millimetres(), 1e-6);
            ChoiceBlank stays =
                    (ChoiceBlank) part(problem, "pole-margin").blanks().get(1);
            assertEquals(margin < 0 ? "blade-runs-off-belt" : "blade-stays-on-belt", stays.rightOption());
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"belt-mark-cup", "mount-marks-sloping", "bracket-square", "pole-length"})
    void everyCardIsDrawn(String family) {
        Set<String> cards = problems(family)
                .map(problem -> problem.scene().findCard().orElseThrow().id())
                .collect(Collectors.toSet());
        assertEquals(3, cards.size());
    }
}
