package beltmark.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.refusal.Refusal;
import beltmark.core.solution.Warning;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.time.ZoneOffset;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineComputerTest {

    private static final String RATE =
            "{\"id\":\"a\",\"quantity\":\"spring-rate\",\"given\":{\"wireMm\":6,\"meanCoilMm\":50,\"activeCoils\":5,"
                    + "\"shearModulusMpa\":77200}}";

    private static JsonNode answer(String line) {
        return SampleLines.parse(SampleLines.COMPUTER.answer(line, 7));
    }

    private static String refused(String line) {
        JsonNode answer = answer(line);
        assertTrue(answer.path("because").asText().length() > 10, answer::toString);
        assertFalse(answer.has("value"), answer::toString);
        return answer.path("refused").asText();
    }

    @Test
    void answersWithValueUnitAndSteps() {
        JsonNode answer = answer(RATE);
        assertEquals("a", answer.path("id").asText());
        assertEquals(20.01024, answer.path("value").doubleValue(), 1e-9);
        assertEquals("N/mm", answer.path("unit").asText());
        assertEquals("spring-rate", answer.at("/steps/0/step").asText());
        assertEquals(6, answer.at("/steps/0/values/wire/value").doubleValue());
        assertEquals(0, answer.path("warnings").size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "not json|BAD_LINE",
                "``|BAD_LINE",
                "[1]|BAD_LINE",
                "7|BAD_LINE",
                "{\"id\":1|BAD_LINE",
                "{\"id\":1,\"id\":2}|BAD_LINE",
                "{\"id\":1} {\"id\":2}|BAD_LINE",
                "{\"quantity\":\"spring-rate\",\"given\":[]}|BAD_LINE",
                "{\"quantity\":\"spring-rate\",\"given\":{\"wireMm\":NaN}}|BAD_LINE",
                "{\"quantity\":\"no-such\",\"given\":{}}|UNKNOWN_QUANTITY",
                "{\"quantity\":7,\"given\":{}}|NOT_A_TEXT",
                "{\"given\":{}}|MISSING_FIELD",
                "{\"quantity\":\"spring-rate\"}|MISSING_FIELD",
                "{\"quantity\":\"spring-rate\",\"given\":{}}|MISSING_FIELD",
                "{\"quantity\":\"spring-rate\",\"given\":{\"wireMm\":null}}|MISSING_FIELD",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":6,\"meanCoilMm\":50},\"more\":1}|UNKNOWN_FIELD",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":6,\"coilsMm\":50}}|UNKNOWN_FIELD",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":6,\"wireIn\":1,\"meanCoilMm\":50}}|FIELD_TWICE",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":\"6\",\"meanCoilMm\":50}}|NOT_A_NUMBER",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":[6],\"meanCoilMm\":50}}|NOT_A_NUMBER",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":1e400,\"meanCoilMm\":50}}|OUT_OF_RANGE",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":-1e400,\"meanCoilMm\":50}}|OUT_OF_RANGE",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":0,\"meanCoilMm\":50}}|OUT_OF_RANGE",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireIn\":\"1/0\",\"meanCoilMm\":50}}|NOT_A_LENGTH",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireIn\":\"3 5/4\",\"meanCoilMm\":50}}|NOT_A_LENGTH",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":6,\"meanCoilMm\":6}}|COIL_NOT_LARGER_THAN_WIRE",
                "{\"quantity\":\"tensile-strength\",\"given\":{\"wireMm\":6,\"material\":\"wood\"}}|NOT_A_CHOICE",
                "{\"quantity\":\"in-series\",\"given\":{\"efficiencies\":0.8}}|NOT_A_LIST",
                "{\"quantity\":\"in-series\",\"given\":{\"efficiencies\":[]}}|NOTHING_GIVEN",
                "{\"quantity\":\"in-series\",\"given\":{\"efficiencies\":[0.8,\"x\"]}}|NOT_A_NUMBER",
                "{\"quantity\":\"read-length\",\"given\":{\"text\":\"-1/2\"}}|NOT_A_LENGTH",
                "{\"quantity\":\"convert\",\"given\":{\"amount\":1,\"from\":\"in\",\"to\":\"N\"}}|UNITS_DO_NOT_MATCH"
            })
    void refusesByName(String line, String code) {
        assertEquals(code, refused(line == null ? "" : line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "round-decimals|number=2.5 places=1.5|places is 1.5; it has to be a whole number.",
                "stack|tolerancesMm=[1,-2]|tolerancesMm is -2 mm; it has to be between 0 and",
                "spring-index|wireMm=0 meanCoilMm=50|wireMm is 0 mm; it has to be more than 0.",
                "spring-index|wireDiameterIn=-1 meanCoilMm=50|wireDiameterIn is -25.4 mm; it has to be more than 0.",
                "spring-index|wireMm=1e300 meanCoilMm=50|wireMm is 1.0E300; it has to be",
                "in-series|efficiencies=[2]|efficiencies is 2; it has to be between 0 and 1.",
                "bleed-resistor|capacitanceMf=1 fromV=90 toV=0 timeS=60|toV is 0 V; it has to be more than 0.",
                "capacitor-voltage|capacitanceMf=1 startVoltageV=-1 resistanceOhm=5 timeS=60|startVoltageV is -1 V; it",
                "blade-load|rateNPerMm=20 freeMm=114.3 settingMm=-5 massKg=34 bladeMm=1100|settingMm is -5 mm; it"
            })
    void namesTheFieldAsItStandsInTheLine(String quantity, String given, String sentence) {
        JsonNode answer = answer(SampleLines.line(quantity, given).toString());
        String because = answer.path("because").asText();
        assertTrue(because.startsWith(sentence), because);
        assertEquals(sentence.split(" ", 2)[0], answer.path("field").asText());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"id\":\"k\",\"quantity\":\"spring-index\",\"given\":{\"wireMm\":NaN}}|NaN and Infinity are no numbers",
                "{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":6,\"wireMm\":6},\"id\":\"k\"}|twice in one object",
                "{\"id\":\"k\",\"quantity\":\"spring-index\",\"given\":{\"wireMm\":1e400,\"meanCoilMm\":50}}|wireMm is ∞;",
                "{\"id\":\"k\",\"quantity\":|goes wrong at character 2"
            })
    void keepsTheIdOfALineItCannotRead(String line, String sentence) {
        JsonNode answer = answer(line);
        assertEquals("k", answer.path("id").asText());
        assertTrue(answer.path("because").asText().contains(sentence), answer::toString);
        assertFalse(answer.toString().contains("JsonReadFeature"), answer::toString);
    }

    @Test
    void repeatsNothingAtLength() {
        String name = "x".repeat(5000);
        JsonNode quantity = answer("{\"quantity\":\"" + name + "\",\"given\":{}}");
        assertTrue(quantity.path("because").asText().length() < 200, quantity::toString);
        JsonNode field = answer("{\"quantity\":\"spring-index\",\"given\":{\"" + name + "\":1}}");
        assertTrue(field.path("because").asText().length() < 300, field::toString);
        JsonNode number = answer("{\"quantity\":\"spring-index\",\"given\":{\"wireMm\":" + "9".repeat(900) + "}}");
        assertTrue(number.path("because").asText().length() < 200, number::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "read-length|text=120.65mm|Read as 120.65 mm.",
                "round-length|lengthMm=121.4|121.4 mm to the nearest 1/16 in is 120.65 mm."
            })
    void tellsLengthsToTheLastDecimal(String quantity, String given, String sentence) {
        assertEquals(
                sentence,
                answer(SampleLines.line(quantity, given).toString())
                        .at("/steps/0/says")
                        .asText());
    }

    @Test
    void namesTheFieldAndWhatIsExpected() {
        JsonNode answer = answer("{\"id\":3,\"quantity\":\"spring-index\",\"given\":{\"wireMm\":6}}");
        assertEquals(3, answer.path("id").intValue());
        assertEquals("meanCoilMm", answer.path("field").asText());
        assertTrue(answer.path("because").asText().contains("wireMm, meanCoilMm"));
        assertEquals(7, answer.path("line").intValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "blade-load|rateNPerMm=20 freeMm=114.3 solidMm=42 lengthMm=115 massKg=34 bladeMm=1100|SPRING_LOOSE",
                "blade-load|rateNPerMm=20 freeMm=114.3 solidMm=42 lengthMm=41 massKg=34 bladeMm=1100|COIL_BIND",
                "blade-load|rateNPerMm=20 freeMm=114.3 solidMm=42 lengthMm=110 massKg=34 bladeMm=1100|NO_CONTACT",
                "blade-load|rateNPerMm=20 freeMm=114.3 solidMm=120 lengthMm=110 massKg=3 bladeMm=1100|FREE_NOT_ABOVE_SOLID",
                "spring-setting|lineLoadNPerMm=9 rateNPerMm=20 freeMm=114.3 solidMm=42 massKg=34 bladeMm=1100|COIL_BIND",
                "splice-check|rateNPerMm=20 freeMm=114 solidMm=42 coilMm=50 loadN=500 exposureMm=38 spliceMm=9|COIL_BIND",
                "edge-line-loads|loadN=500 eccentricityMm=550 bladeMm=1100|TIPS_OVER",
                "even-springs|loadN=500 weightN=300 spanMm=1100 bladeMm=1100 bladeOffCentreMm=1|BLADE_OFF_ITS_SPAN",
                "after-wear|loadN=500 rateNPerMm=20 wearMm=12.5|NO_CONTACT",
                "bushing-band|netN=500 friction=1 bushingFriction=0.5 overhangMm=50 bushingMm=100|JAM",
                "exposure-after|exposureMm=38 bracketHighMm=30 dropMm=10|NO_SLEEVE_LEFT",
                "bolt-clearance|alongMm=50 aboveMm=0 plateWidthMm=100 plateHeightMm=160 headRadiusMm=4|BOLT_IN_PLATE",
                "centring|insideMm=1400 beltMm=1000 bladeMm=1100|BLADE_WIDER_THAN_BELT",
                "centring|insideMm=1400 beltMm=1200 bladeMm=1100 beltOffsetMm=160|BLADE_IN_WALL",
                "out-of-square|firstDiagonalMm=900 secondDiagonalMm=900 alongMm=1000|DIAGONALS_IMPOSSIBLE",
                "arm-angle-error|armMm=200 heightMm=150 heightOffMm=51|BEYOND_ARM",
                "cleaning-efficiency|beforeGPerM2=100 afterGPerM2=101|AFTER_EXCEEDS_BEFORE",
                "index-for-strength|wireMm=1 strengthMpa=500 forceN=1000|WIRE_TOO_THIN",
                "bleed-resistor|capacitanceMf=1 fromV=50 toV=50 timeS=60|VOLTAGE_NOT_ABOVE_LIMIT",
                "air-energy|gaugeMpa=0 volumeL=25|NOT_PRESSURISED",
                "overrun|rateNPerMm=20 freeMm=114 solidMm=42 forceN=1441|LOAD_BEYOND_SOLID",
                "spring-rate|wireMm=6 meanCoilMm=50 activeCoils=0 shearModulusMpa=77200|NO_ACTIVE_COILS",
                "orientation|overslungLowMm=9 overslungHighMm=8 underslungLowMm=0 underslungHighMm=1 floorMm=-9"
                        + " roofMm=9 clearanceMm=1|UPSIDE_DOWN",
                "orientation|overslungLowMm=-9 overslungHighMm=9 underslungLowMm=-9 underslungHighMm=9 floorMm=-9"
                        + " roofMm=9 clearanceMm=1|NOTHING_FITS"
            })
    void refusesTheImpossibleByName(String quantity, String given, String code) {
        assertEquals(code, refused(SampleLines.line(quantity, given).toString()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spring-index|wireMm=6 meanCoilMm=80|INDEX_OUTSIDE_4_TO_12",
                "spring-rate|wireMm=6 meanCoilMm=50 activeCoils=2 shearModulusMpa=77200|COILS_OUTSIDE_3_TO_15",
                "tensile-strength|material=chrome-silicon wireMm=12|WIRE_OUTSIDE_TABLE",
                "overrun|rateNPerMm=20 freeMm=114 solidMm=42 forceN=1300|THIN_OVERRUN",
                "safety-at-solid|strengthMpa=1000 stressAtSolidMpa=900|SAFETY_BELOW_1_2",
                "buckling|freeMm=300 meanCoilMm=50|MAY_BUCKLE",
                "surge-frequency|rateNPerMm=20 massKg=0.5 forcingHz=7|SURGE_NEAR_FORCING",
                "edge-line-loads|loadN=500 eccentricityMm=200 bladeMm=1100|EDGE_LIFTS",
                "splice-check|rateNPerMm=20 freeMm=114 solidMm=42 coilMm=92 loadN=500 exposureMm=6 spliceMm=9|TRAVEL_SHORT",
                "spring-setting|lineLoadNPerMm=0.5 rateNPerMm=20 freeMm=114.3 massKg=34 bladeMm=1100 chartMm=90|CHART_DIFFERS",
                "contact-pressure|lineLoadNPerMm=2 thicknessMm=8|PRESSURE_OUTSIDE_30_TO_100_KPA",
                "drag-standard|pressureKpa=30 widthM=1.2 thicknessMm=8 friction=0.8|FRICTION_OUTSIDE_0_5_TO_0_7",
                "centring|insideMm=1400 beltMm=1200 bladeMm=1100 mistrackingMm=60|NEGATIVE_EDGE_MARGIN",
                "centring|insideMm=1400 beltMm=1200 bladeMm=900 mistrackingMm=110|BELT_TOUCHES_STRUCTURE",
                "rollback|loadKgPerM=10 liftM=1 frictionN=9000|HELD_BY_FRICTION",
                "air-energy|gaugeMpa=0.7 volumeL=200|GAS_ENERGY_OVER_100_KJ",
                "capacitor-time|resistanceKohm=1 capacitanceUf=8 fromV=40 toV=50|ALREADY_BELOW_LIMIT",
                "cleaning-efficiency|beforeGPerM2=100 afterGPerM2=100|NOTHING_REMOVED"
            })
    void answersTheDoubtfulWithAWarning(String quantity, String given, String warning) {
        JsonNode answer = answer(SampleLines.line(quantity, given).toString());
        assertTrue(answer.has("value"), answer::toString);
        assertTrue(answer.path("warnings").toString().contains("\"" + warning + "\""), answer::toString);
    }

    @Test
    void aThresholdItselfIsNotDoubtful() {
        JsonNode answer = answer(SampleLines.line("overrun", "rateNPerMm=1 freeMm=1150 solidMm=0 forceN=1000")
                .toString());
        assertEquals("[]", answer.path("warnings").toString());
    }

    @Test
    void letsTheChartWinAndSaysSo() {
        String given = "lineLoadNPerMm=0.5 rateNPerMm=20.01024 freeMm=114.3 massKg=34.1 bladeMm=1100 washerMm=3.175";
        JsonNode computed =
                answer(SampleLines.line("length-for-line-load", given).toString());
        assertEquals("load", computed.path("basis").asText());
        JsonNode chart = answer(
                SampleLines.line("spring-setting", given + " chartIn=3.75").toString());
        assertEquals(95.25, chart.path("value").doubleValue());
        assertEquals("chart", chart.path("basis").asText());
    }

    @Test
    void prefersTheOrientationAsDeliveredWhenBothFit() {
        JsonNode answer = answer(SampleLines.line(
                        "orientation",
                        "overslungLowMm=-50 overslungHighMm=300 underslungLowMm=-100 underslungHighMm=50 floorMm=-400"
                                + " roofMm=340 clearanceMm=20")
                .toString());
        assertEquals("overslung", answer.path("value").asText());
        assertEquals(40, answer.path("gapMm").intValue());
        assertEquals("underslung", answer.path("largestGapOrientation").asText());
        assertEquals(290, answer.path("largestGapMm").intValue());
    }

    @Test
    void everyRefusalAndWarningHasASentence() {
        Set<String> keys = Texts.load(ZoneOffset.UTC).keys();
        for (Refusal refusal : Refusal.values()) {
            assertTrue(keys.contains(refusal.key()), refusal.key());
        }
        for (Warning warning : Warning.values()) {
            assertTrue(keys.contains(warning.key()), warning.key());
        }
        for (LineFault fault : LineFault.values()) {
            assertTrue(keys.contains(fault.key()), fault.key());
        }
    }

    @Test
    void everySampleIsAnsweredInWords() {
        for (ObjectNode line : SampleLines.all()) {
            JsonNode answer = SampleLines.answer(line);
            assertTrue(answer.has("value"), () -> line + " " + answer);
            assertTrue(answer.path("steps").size() > 0, answer::toString);
        }
    }

    @Test
    void listsEveryQuantityWithItsFields() {
        assertEquals(Calculations.list().size(), Listing.lines().size());
        JsonNode rate = SampleLines.parse(Listing.lines().get(1));
        assertEquals("spring-rate", rate.path("quantity").asText());
        assertEquals("wireMm", rate.at("/given/0/field").asText());
        assertEquals("mm", rate.at("/given/0/unit").asText());
        assertTrue(rate.at("/given/0/required").booleanValue());
        assertEquals("N/mm", rate.at("/results/0/unit").asText());
    }

    @Test
    void passesOverALineThatIsTooLongAndGoesOn() throws IOException {
        LineInput lines = new LineInput(new StringReader("\uFEFFfirst\n" + "x".repeat(200_000) + "\nlast"));
        assertTrue(lines.next());
        assertEquals("first", lines.line());
        assertTrue(lines.next());
        assertNull(lines.line());
        assertTrue(lines.next());
        assertEquals("last", lines.line());
        assertFalse(lines.next());
        LineComputer computer = new LineComputer(Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.MILLIMETRE));
        assertNotNull(SampleLines.parse(computer.tooLong(2)).get("refused"));
    }
}
