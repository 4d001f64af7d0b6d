package beltmark.core.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.Sample;
import beltmark.core.setup.Sides;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** By hand; what is wanted is site policy, so there is no published value to compare with. */
class FinishCheckTest {

    private static final FinishLimits LIMITS =
            new FinishLimits(Sample.inches("1/2"), Angle.ofDegrees(90), Angle.ofDegrees(3));
    private static final Sides SLEEVES = new Sides(Sample.inches("1 3/8"), Sample.inches("1 1/4"));

    @ParameterizedTest
    @CsvSource({
        // the middle is off by half of what the two distances differ
        "4, 4, true",
        "4 1/2, 3 1/2, true",
        "4 9/16, 3 1/2, false",
        "3, 4, true",
        "2 7/8, 4, false"
    })
    void theBladeIsInTheMiddleWithinHalfTheDifference(String left, String right, boolean within) {
        Finish finish = finish(new Sides(Sample.inches(left), Sample.inches(right)), 90, BounceResult.EVEN, "3/8");
        assertEquals(within, within(finish).get(FinishReading.CENTRING));
    }

    @ParameterizedTest
    @CsvSource({"90, true", "87, true", "93, true", "86.9, false", "93.1, false"})
    void theAngleIsWithinItsToleranceBothLimitsIncluded(double degrees, boolean within) {
        assertEquals(
                within,
                within(finish(middle(), degrees, BounceResult.EVEN, "3/8")).get(FinishReading.BLADE_ANGLE));
    }

    @ParameterizedTest
    @EnumSource
    void onlyAnEvenBounceIsAsItShouldBe(BounceResult bounce) {
        assertEquals(
                bounce == BounceResult.EVEN,
                within(finish(middle(), 90, bounce, "3/8")).get(FinishReading.BOUNCE));
    }

    @ParameterizedTest
    @CsvSource({"0, true", "3/8, true", "1 1/4, true", "1 5/16, false", "1 3/8, false"})
    void aSplicePassesAsFarAsTheShorterSleeveShows(String splice, boolean within) {
        assertEquals(
                within, within(finish(middle(), 90, BounceResult.EVEN, splice)).get(FinishReading.SPLICE));
    }

    @Test
    void offCentreIsPositiveToTheRight() {
        assertEquals(
                Sample.inches("1/4"),
                finish(new Sides(Sample.inches("4 1/2"), Sample.inches("4")), 90, BounceResult.EVEN, "0")
                        .offCentre());
    }

    private static Sides middle() {
        return Sides.both(Length.ofMillimetres(100));
    }

    private static Finish finish(Sides edges, double degrees, BounceResult bounce, String splice) {
        return new Finish(edges, Angle.ofDegrees(degrees), bounce, Sample.inches(splice));
    }

    private static Map<FinishReading, Boolean> within(Finish finish) {
        return FinishCheck.of(LIMITS, SLEEVES, finish).findings().stream()
                .collect(Collectors.toMap(FinishFinding::reading, FinishFinding::isWithin));
    }
}
