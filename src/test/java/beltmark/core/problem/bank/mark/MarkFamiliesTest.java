package beltmark.core.problem.bank.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.measure.InchSum;
import beltmark.core.measure.TapeReading;
import beltmark.core.problem.Answer;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.solution.Slip;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
        // worked by hand on paper
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
        // worked by hand on paper
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
}
