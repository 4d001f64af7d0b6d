package beltmark.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.Sample;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures of the test card: common practice, no published source. */
class TradeFiguresTest {

    private final HardwareCard card = Sample.card();

    @ParameterizedTest
    @CsvSource({
        // belt mark, way, mount mark
        "24 in, OVERSLUNG, 28 3/4 in",
        "24 in, UNDERSLUNG, 24 1/2 in",
        "23 5/16 in, OVERSLUNG, 28 1/16 in",
        "609.6 mm, OVERSLUNG, 730.25 mm",
        "609.6 mm, UNDERSLUNG, 622.3 mm"
    })
    void mountMarkStandsItsOffsetAboveTheBeltMark(String beltMark, Orientation way, String mountMark) {
        MountMarks marks = new MountMarks(Sides.both(Sample.inches(beltMark)), card.mountOffset(Tip.CARBIDE, way));
        assertEquals(Sides.both(Sample.inches(mountMark)), marks.heights());
    }

    @Test
    void eachSideIsMeasuredFromItsOwnBeltMark() {
        Sides beltMarks = new Sides(Sample.inches("24 1/8"), Sample.inches("24 7/16"));
        Sides heights = new MountMarks(beltMarks, Sample.inches("4 3/4")).heights();
        assertEquals(new Sides(Sample.inches("28 7/8"), Sample.inches("29 3/16")), heights);
    }

    @ParameterizedTest
    @CsvSource({
        // room above and below the belt mark in inches; overslung needs 5 1/4 in above with the clearance, underslung 9
        // below
        "5 1/4, 6, OVERSLUNG",
        "5 1/8, 9, UNDERSLUNG",
        "5 1/8, 8 7/8, ",
        "30, 30, OVERSLUNG"
    })
    void overslungIsPreferredAndUnderslungTakenWhenSomethingIsInTheWay(
            String roof, String floor, Orientation expected) {
        Surroundings place = new Surroundings(Sample.inches(floor).negated(), Sample.inches(roof), List.of());
        assertEquals(
                Optional.ofNullable(expected),
                OrientationChoice.of(card, Tip.CARBIDE, place).chosen());
    }

    @Test
    void saysByHowMuchNothingFits() {
        Surroundings place = new Surroundings(Sample.inches("8 3/4").negated(), Sample.inches("5"), List.of());
        assertEquals(
                Sample.inches("1/4"),
                OrientationChoice.of(card, Tip.CARBIDE, place).shortBy());
    }

    @Test
    void anObstacleWithinTheReachIsInTheWay() {
        Reach pipe = new Reach(Sample.inches("4"), Sample.inches("5"));
        Surroundings place = new Surroundings(Sample.inches("12").negated(), Sample.inches("9"), List.of(pipe));
        OrientationChoice choice = OrientationChoice.of(card, Tip.CARBIDE, place);
        assertEquals(Optional.of(Orientation.UNDERSLUNG), choice.chosen());
        assertEquals(Sample.inches("3/4").negated(), choice.overslungGap());
    }

    @ParameterizedTest
    @CsvSource({"INCH, 3 3/4", "MILLIMETRE, 95.25"})
    void carbideSetUpIsSetToThreeAndThreeQuarters(LengthUnit unit, String expected) {
        SpringSetting setting = SpringSetting.fromChart(card, Tip.CARBIDE, Length.ofMillimetres(1100))
                .orElseThrow();
        assertEquals(LengthReader.read(expected, unit).getLength(), setting.springLength());
    }

    @Test
    void oneAndAHalfInchesOfSleeveStayExposedWhenOnTheMark() {
        SleeveExposure sleeve = new SleeveExposure(card.sleeve(), Length.ZERO, Sample.inches("3/8"));
        assertEquals(Sample.inches("1 1/2"), sleeve.atRest());
        assertEquals(Sample.inches("1 1/8"), sleeve.overSplice());
    }

    @Test
    void mountingHighTakesFromTheSleeve() {
        SleeveExposure sleeve = new SleeveExposure(card.sleeve(), Sample.inches("1/4"), Length.ZERO);
        assertEquals(Sample.inches("1 1/4"), sleeve.atRest());
    }
}
