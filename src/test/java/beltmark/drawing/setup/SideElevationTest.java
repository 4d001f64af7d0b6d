package beltmark.drawing.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.problem.setup.SetupPart;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.setup.Tip;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.drawing.Drawing;
import beltmark.drawing.Svg;
import beltmark.texts.Words;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SideElevationTest {

    private static final Words WORDS = Svg.words(Graduation.SIXTEENTH_INCH);
    private static final Set<SetupPart> ALL = EnumSet.allOf(SetupPart.class);

    /** The trade's figures: top of the tensioner 4 3/4 in above the belt mark, under a roof that is near or far. */
    private static Situation situation(String roof) {
        return new Situation(
                Sample.card(),
                Tip.CARBIDE,
                Sample.card().tip(Tip.CARBIDE).chart().get(0).blade(),
                new Sides(Sample.inches("24 5/16"), Sample.inches("24 9/16")),
                new Surroundings(
                        Sample.inches("14").negated(),
                        Sample.inches(roof),
                        List.of(new Reach(
                                Sample.inches("13").negated(),
                                Sample.inches("11 1/2").negated()))),
                Sample.inches("1/4"),
                Sample.inches("3/8"));
    }

    private static Situation with(Situation like, HardwareCard card, Sides beltMarks) {
        return new Situation(
                card, like.tip(), like.blade(), beltMarks, like.surroundings(), like.mountedHigh(), like.splice());
    }

    private static HardwareCard withClearance(HardwareCard card, Length clearance) {
        return new HardwareCard(
                card.id(),
                card.version(),
                card.tips(),
                card.reaches(),
                clearance,
                card.spring(),
                card.washer(),
                card.sleeve(),
                card.tolerances(),
                card.blade(),
                card.pole());
    }

    private static Drawing orientation(Situation situation, Set<SetupPart> told) {
        return new SideElevation(situation, told).orientation(WORDS);
    }

    private static Drawing marks(Situation situation, Set<SetupPart> told) {
        return new SideElevation(situation, told).mountMarks(Orientation.OVERSLUNG, WORDS);
    }

    private static String length(Svg svg, String dimension) {
        return svg.root().expectFirst("[data-dimension=" + dimension + "] text").text();
    }

    @Test
    void dimensionsTheGivenSurroundingsFromTheBeltMark() {
        Svg svg = Svg.of(orientation(situation("9"), Set.of()));
        assertEquals("9 in", length(svg, "roof"));
        assertEquals("14 in", length(svg, "floor"));
        assertEquals("11 1/2 in", length(svg, "obstacle-below-from"));
        assertEquals("13 in", length(svg, "obstacle-below-to"));
    }

    @Test
    void dimensionsTheLeastGapsOnceTheOrientationIsTold() {
        Situation situation = situation("9");
        OrientationChoice choice = situation.orientation();
        Svg svg = Svg.of(orientation(situation, Set.of(SetupPart.ORIENTATION)));
        for (Orientation way : Orientation.values()) {
            assertEquals(WORDS.length(choice.gap(way).abs()), length(svg, "gap-" + way.id()));
        }
    }

    @Test
    void marksTheChosenWayByWordAndSign() {
        Svg svg = Svg.of(orientation(situation("9"), Set.of(SetupPart.ORIENTATION)));
        assertTrue(svg.texts().contains("mount this way"));
        assertFalse(svg.root().select(".d-sign").isEmpty());
        assertEquals(1, svg.root().select(".d-chosen").size());
    }

    @Test
    void marksNoWayWhereNothingFits() {
        Situation tight = situation("1/2");
        Svg svg = Svg.of(orientation(tight, Set.of(SetupPart.ORIENTATION)));
        assertTrue(tight.orientation().chosen().isEmpty());
        assertFalse(svg.texts().contains("mount this way"));
        assertTrue(svg.root().select(".d-chosen").isEmpty());
    }

    @Test
    void asksTheOrientationWithoutAnyTraceOfTheChoice() {
        Situation fits = situation("9");
        HardwareCard wide = withClearance(fits.card(), Sample.inches("6"));
        Situation doesNot = with(fits, wide, fits.beltMarks());
        assertFalse(fits.orientation().chosen().equals(doesNot.orientation().chosen()));
        assertEquals(
                Svg.of(orientation(fits, Set.of())).source(),
                Svg.of(orientation(doesNot, Set.of())).source());
    }

    @Test
    void saysTheBeltMarksOnlyOnceTold() {
        Situation one = situation("9");
        Situation other = with(one, one.card(), one.beltMarks().plus(Sample.inches("3/16")));
        assertEquals(
                Svg.of(marks(one, Set.of())).source(),
                Svg.of(marks(other, Set.of())).source());
        assertTrue(Svg.of(marks(one, Set.of(SetupPart.BELT_MARK))).texts().contains("24 5/16 in"));
    }

    @Test
    void saysTheMountMarksOnlyOnceTold() {
        Svg asked = Svg.of(marks(situation("9"), Set.of(SetupPart.BELT_MARK)));
        Svg told = Svg.of(marks(situation("9"), ALL));
        assertFalse(asked.source().contains("29 1/16") || asked.source().contains("4 3/4 in"), asked.source());
        assertTrue(asked.root().select("[data-nm]").isEmpty());
        assertTrue(
                told.texts().containsAll(List.of("29 1/16 in", "29 5/16 in")),
                told.texts().toString());
        assertEquals("4 3/4 in", length(told, "offset-right"));
    }

    @Test
    void asksForTheSleeveWithWhatIsGivenOnly() {
        Situation situation = situation("9");
        Svg asked = Svg.of(new SideElevation(situation, Set.of()).sleeve(WORDS));
        assertEquals(
                List.of("mounted-high", "splice"),
                asked.root().select("[data-nm]").eachAttr("data-dimension"));
        Svg told = Svg.of(new SideElevation(situation, ALL).sleeve(WORDS));
        assertEquals(WORDS.length(situation.sleeve().overSplice()), length(told, "sleeve-over-splice"));
    }

    @Test
    void drawsNoDimensionForATensionerOnItsMark() {
        Situation off = situation("9");
        Situation on = new Situation(
                off.card(), off.tip(), off.blade(), off.beltMarks(), off.surroundings(), Length.ZERO, off.splice());
        Svg told = Svg.of(new SideElevation(on, ALL).sleeve(WORDS));
        assertEquals(
                List.of("splice", "sleeve-at-rest", "sleeve-over-splice"),
                told.root().select("[data-nm]").eachAttr("data-dimension"));
        assertFalse(told.source().contains("its mount mark."), told.source());
    }

    @Test
    void drawsSmallerWhatWouldNotFitOnTheSheet() {
        Situation small = situation("9");
        Surroundings high = new Surroundings(
                Sample.inches("60").negated(),
                Sample.inches("40"),
                small.surroundings().obstacles());
        Situation large = new Situation(
                small.card(), small.tip(), small.blade(), small.beltMarks(), high, small.mountedHigh(), small.splice());
        Svg svg = Svg.of(orientation(large, ALL));
        assertEquals(20, svg.scale());
        assertTrue(svg.sheet().bottom() < 220);
    }
}
