package beltmark.core.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Sides;
import beltmark.core.solution.Warning;
import beltmark.core.units.Length;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetupSheetTest {

    /** The demo rows of a 20 N/mm spring (computed by hand and by a second program), to their printed digits. */
    @ParameterizedTest
    @CsvSource({
        // blade, moving mass, computed, set, load, line load, pressure, per 1/16 in, wear, frequency
        "800, 27.8, 100.67, 3 15/16, 426, 0.533, 67, 0.149, 2.13, 6.04",
        "1000, 32.0, 97.14, 3 13/16, 512, 0.512, 64, 0.124, 2.56, 5.63",
        "1100, 34.1, 95.38, 3 3/4, 555, 0.505, 63, 0.114, 2.77, 5.45",
        "1200, 36.2, 93.61, 3 11/16, 598, 0.498, 62, 0.106, 2.99, 5.29"
    })
    void givesTheFiguresOfTheDemoRows(
            int blade,
            double mass,
            double computed,
            String set,
            double load,
            double lineLoad,
            double pressure,
            double perGraduation,
            double wear,
            double frequency) {
        SetupSheet sheet = SetupSheet.of(new Plain().blade(blade + " mm").build());
        Springs springs = sheet.springs();
        assertEquals(mass, sheet.installation().assembly().moving().kilograms(), 1e-9);
        assertEquals(computed, get(springs.computed()).measured().millimetres(), 0.005);
        assertEquals(Sample.inches(set), get(springs.setting()).measured());
        double newtons = get(springs.load()).load().newtons();
        assertEquals(load, newtons, 0.5);
        assertEquals(lineLoad, get(springs.load()).lineLoad().newtonsPerMillimetre(), 0.0005);
        assertEquals(pressure, get(sheet.running().pressure()).kilopascals(), 0.5);
        assertEquals(perGraduation, get(springs.perGraduation()).worst().newtons() / newtons, 0.0005);
        assertEquals(wear, get(sheet.running().wear()).millimetres(), 0.005);
        assertEquals(frequency, get(sheet.passing().frequency()).hertz(), 0.005);
    }

    @Test
    void checksTheSpliceOfTheBaseline() {
        Passing passing = SetupSheet.of(new Plain().build()).passing();
        assertEquals(Sample.inches("1 1/2"), get(passing.sleeveAtRest()));
        assertEquals(28.1, get(passing.sleeveOverSplice()).millimetres(), 1e-6);
        assertEquals(6.125, get(passing.coilGaps()).millimetres(), 1e-6);
        assertEquals("travel-limit.sleeve", get(passing.splice()).limit().key());
        assertEquals(28.1, get(passing.splice()).margin().millimetres(), 1e-6);
        assertEquals(955, get(passing.splice()).load().newtons(), 1);
        assertEquals(40.075, get(passing.coilMargin()).millimetres(), 1e-6);
        assertEquals(69.2, get(passing.back()).beltPassed().millimetres(), 0.5);
    }

    @Test
    void tellsWhatUnevenSpringsDo() {
        Springs springs = SetupSheet.of(new Plain().build()).springs();
        assertEquals(0.259, get(springs.uneven()).left().newtonsPerMillimetre(), 0.002);
        assertEquals(0.751, get(springs.uneven()).right().newtonsPerMillimetre(), 0.002);
        assertEquals(1.5875 / 2.5, get(springs.nut()).turns().value(), 1e-9);
    }

    @Test
    void marksEachSideFromItsOwnBeltMark() {
        Mounting mounting = SetupSheet.of(new Plain().build()).mounting();
        assertEquals(Orientation.OVERSLUNG, get(mounting.way()));
        assertEquals(Sample.inches("42 3/4"), get(mounting.marks()).heights().left());
        assertEquals(Sample.inches("43 1/4"), get(mounting.marks()).heights().right());
    }

    @Test
    void readsFartherOnAPlumbTapeOnASlope() {
        Mounting mounting = SetupSheet.of(new Plain().slope(15).build()).mounting();
        double offset = Sample.inches("4 3/4").millimetres();
        assertEquals(
                offset / Math.cos(Math.toRadians(15)),
                get(mounting.offset()).plumbReading().millimetres(),
                1e-9);
        assertEquals(
                get(mounting.offset()).plumbReading().toLength().plus(Sample.inches("38")),
                get(mounting.plumbMarks()).left());
    }

    @ParameterizedTest
    @CsvSource({"0, 0, false", "12, 0.25, true"})
    void leavesOutTheStepsToNothing(double slope, double high, boolean told) {
        Length off = Length.ofInches(high);
        SetupSheet sheet =
                SetupSheet.of(new Plain().slope(slope).mountedHigh(high + " in").build());
        assertEquals(off, sheet.installation().situation().mountedHigh());
        for (String step : List.of("plumb-reading", "got-if-plumb", "sleeve-mounted-high")) {
            assertEquals(told, sheet.steps().stream().anyMatch(one -> one.id().equals(step)), step);
        }
    }

    @Test
    void centresTheBladeAndMeasuresThePole() {
        Across across = SetupSheet.of(new Plain().build()).across();
        assertEquals(150, get(across.centring()).leftWall().millimetres(), 1e-9);
        assertEquals(10, get(across.centring()).edgeMargin().millimetres(), 1e-9);
        assertEquals(1500 + 2 * 150, get(across.pole()).millimetres(), 1e-9);
    }

    @Test
    void aBladeThatIsNotOnTheChartIsSetByComputingAndSaysSo() {
        SetupSheet sheet = SetupSheet.of(new Plain().blade("1050 mm").build());
        assertEquals("setting-from.load", get(sheet.springs().setting()).basis().key());
        assertEquals(Sample.inches("3 13/16"), get(sheet.springs().setting()).measured());
        assertTrue(sheet.warnings().contains(Warning.NOT_ON_CHART));
    }

    @ParameterizedTest
    @CsvSource({
        // what is impossible, why, and whether marks, load and centring are still there
        "roof, NOTHING_FITS, false, true, true",
        "blade, BLADE_WIDER_THAN_BELT, true, true, false",
        "inside, BLADE_IN_WALL, true, true, false",
        "long, COIL_BIND, true, false, false",
        "slope, OUT_OF_RANGE, true, false, true",
        "high, NO_SLEEVE_LEFT, true, true, true",
        "splice, COIL_BIND, true, true, true"
    })
    void whatIsImpossibleIsRefusedAndDoesNotHideTheRest(
            String what, Refusal why, boolean marks, boolean load, boolean centring) {
        SetupSheet sheet = SetupSheet.of(impossible(what).build());
        assertTrue(sheet.refusals().stream().map(Refused::refusal).anyMatch(why::equals), () -> sheet.refusals() + "");
        assertEquals(marks, sheet.mounting().marks().result().isPresent());
        assertEquals(load, sheet.springs().load().result().isPresent());
        assertEquals(centring, sheet.across().centring().result().isPresent());
    }

    private static Plain impossible(String what) {
        Plain plain = new Plain();
        return switch (what) {
            case "roof" -> plain.roof("1 in").floor("2 in");
            case "blade" -> plain.belt("1000 mm");
            case "inside" -> plain.inside("1050 mm").belt("1200 mm");
            case "long" -> plain.blade("6000 mm");
            case "slope" -> plain.slope(95);
            case "high" -> plain.mountedHigh("2 in");
            case "splice" -> plain.splice("60 mm");
            default -> throw new IllegalArgumentException(what);
        };
    }

    @Test
    void eachRefusalIsToldOnce() {
        List<Refused> refusals = SetupSheet.of(new Plain().slope(95).build()).refusals();
        assertEquals(
                1,
                refusals.stream()
                        .filter(refused -> refused.refusal() == Refusal.OUT_OF_RANGE)
                        .count());
    }

    @Test
    void doubtsComeWithTheResult() {
        SetupSheet sheet =
                SetupSheet.of(new Plain().mistracking("40 mm").splice("45 mm").build());
        assertTrue(sheet.warnings().containsAll(List.of(Warning.TRAVEL_SHORT, Warning.NEGATIVE_EDGE_MARGIN)));
        assertTrue(sheet.springs().load().result().isPresent());
    }

    @Test
    void aMirroredConveyorHasAMirroredSheet() {
        Sides marks = new Sides(Sample.inches("38"), Sample.inches("39 1/16"));
        SetupSheet sheet = SetupSheet.of(new Plain().marks(marks).build());
        SetupSheet mirrored = SetupSheet.of(
                new Plain().marks(new Sides(marks.right(), marks.left())).build());
        assertEquals(
                get(sheet.mounting().marks()).heights().left(),
                get(mirrored.mounting().marks()).heights().right());
        assertEquals(
                get(sheet.mounting().plumbMarks()).right(),
                get(mirrored.mounting().plumbMarks()).left());
        assertEquals(sheet.springs(), mirrored.springs());
        assertEquals(sheet.passing(), mirrored.passing());
        assertEquals(
                get(sheet.across().centring()).leftWall(),
                get(mirrored.across().centring()).rightWall());
    }

    @Test
    void theStepsEndInTheFiguresOfTheSheet() {
        SetupSheet sheet = SetupSheet.of(new Plain().build());
        Length left = get(sheet.mounting().marks()).heights().left();
        assertTrue(sheet.steps().stream().anyMatch(step -> step.values().containsValue(left)));
        assertEquals(sheet.steps().size(), sheet.steps().stream().distinct().count());
        assertFalse(sheet.steps().isEmpty());
    }

    @Test
    void noSituationMakesItFail() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            SetupSheet sheet = SetupSheet.of(new Plain().shuffled(random).build());
            sheet.steps().stream()
                    .flatMap(step -> step.values().values().stream())
                    .filter(value -> !(value instanceof Word))
                    .forEach(value -> assertTrue(Double.isFinite(value.amount())));
        }
    }

    private static <T> T get(Found<T> found) {
        return found.result().orElseThrow(() -> new AssertionError(found.refusal()));
    }
}
