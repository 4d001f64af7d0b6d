package beltmark.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.Sample;
import beltmark.SampleSite;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetJourneyTest {

    private static final SampleSite[] SITE = new SampleSite[1];

    @BeforeAll
    static void start() {
        SITE[0] = SampleSite.start();
    }

    @AfterAll
    static void stop() {
        SITE[0].close();
    }

    private static Browser inches() {
        return SITE[0].signIn(SampleSite.NEW_HIRE);
    }

    private static Browser millimetres() {
        return SITE[0].signIn(SampleSite.OTHER_NEW_HIRE);
    }

    private static Map<String, String> typedInInches() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("place", "Bora, tail end");
        typed.put("card", "wide-belt-rig");
        typed.put("tip", "carbide");
        typed.put("blade", "1000 mm");
        typed.put("left", "38");
        typed.put("right", "38 1/2");
        typed.put("slope", "12");
        typed.put("above", "18");
        typed.put("below", "20");
        typed.put("belt", "42");
        typed.put("inside", "48");
        typed.put("outside", "54");
        typed.put("splice", "3/8");
        typed.put("speed", "490");
        return typed;
    }

    private static Map<String, String> typedInMillimetres() {
        Map<String, String> typed = typedInInches();
        typed.put("blade", "1000");
        typed.put("left", "965.2");
        typed.put("right", "977.9");
        typed.put("above", "457.2");
        typed.put("below", "508");
        typed.put("belt", "1066.8");
        typed.put("inside", "1219.2");
        typed.put("outside", "1371.6");
        typed.put("splice", "9.525");
        typed.put("speed", "2.4892");
        return typed;
    }

    private static String address(Map<String, String> typed) {
        return "/sheet/show?"
                + typed.entrySet().stream()
                        .map(field ->
                                field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
    }

    private static Map<String, String> with(String name, String value) {
        Map<String, String> typed = typedInInches();
        typed.put(name, value);
        return typed;
    }

    private static List<String> row(Reply sheet, String key) {
        return sheet.page().select("table.to-set tr").stream()
                .filter(row -> row.select("th").text().equals(Sample.says(key)))
                .flatMap(row -> row.select("td b").stream())
                .map(Element::text)
                .toList();
    }

    private static String line(Reply sheet, String key) {
        return sheet.page().select(".sheet-groups div").stream()
                .filter(line -> line.select("dt").text().equals(Sample.says(key)))
                .map(line -> line.select("dd").text())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSheetHoldsTheFiguresOfTheCard() {
        Reply sheet = inches().get(address(typedInInches()));
        assertEquals(200, sheet.status(), sheet::text);
        assertEquals(List.of("43 1/8 in", "43 5/8 in"), row(sheet, "sheet.row.mount-mark"));
        assertEquals(List.of("3 13/16 in", "3 13/16 in"), row(sheet, "sheet.row.spring"));
        assertEquals(List.of("1 5/8 in", "1 5/8 in"), row(sheet, "sheet.row.sleeve"));
        assertEquals("overslung", line(sheet, "sheet.line.way"));
        assertEquals(Sample.says("setting-from.chart"), line(sheet, "sheet.line.setting-from"));
        assertTrue(sheet.text().contains(Sample.says("sheet.caution")));
        assertFalse(sheet.page().select("svg.drawing").isEmpty());
    }

    @Test
    void inchesAndMillimetresGiveTheSameSheet() {
        Browser reader = millimetres();
        Reply typedInInches = inches().get(address(typedInInches()));
        Reply sentOn = reader.get(typedInInches.path());
        Reply own = reader.get(address(typedInMillimetres()));
        assertEquals(200, sentOn.status());
        assertEquals(
                own.page().select(".to-set").text(),
                sentOn.page().select(".to-set").text());
        assertEquals(
                own.page().select(".sheet-groups").text(),
                sentOn.page().select(".sheet-groups").text());
    }

    @Test
    void theAddressSpellsOutEveryUnit() {
        Reply sheet = inches().get(address(typedInInches()));
        assertTrue(sheet.path().contains("left=38+in"), sheet.path());
        assertTrue(sheet.path().contains("speed=490+ft%2Fmin"), sheet.path());
        assertTrue(sheet.path().contains("blade=1000+mm"), sheet.path());
        assertEquals(
                sheet.page().select("article").text(),
                inches().get(sheet.path()).page().select("article").text());
    }

    @ParameterizedTest
    @CsvSource({
        "left, 38 17/16, reading.fault.improper-fraction",
        "right, '', reading.fault.blank",
        "blade, wide, reading.fault.not-a-length",
        "card, other, sheet.fault.pick",
        "tip, '', sheet.fault.pick",
        "outside, 47, sheet.fault.outside",
        "belt, 49, sheet.fault.belt"
    })
    void aFieldThatCannotBeReadIsMarkedAndEverythingTypedIsKept(String field, String value, String sentence) {
        Reply form = inches().get(address(with(field, value)));
        assertEquals(422, form.status());
        assertTrue(form.page().select(".has-error").text().contains(Sample.says(sentence)), form::text);
        assertEquals(1, form.page().select(".has-error").size());
        assertEquals(
                "38 1/2",
                field.equals("right")
                        ? "38 1/2"
                        : form.page().select("[name=right]").val());
        assertEquals("Bora, tail end", form.page().select("[name=place]").val());
    }

    @ParameterizedTest
    @CsvSource({
        "left, 965, 'read as 965 in,'",
        "right, 38 mm, 'read as 1 1/2 in,'",
        "blade, 1000, 'read as 1000 in,'",
        "blade, 0, 'between 7 7/8 in'",
        "splice, 10, 'read as 10 in,'",
        "off, 6.35, 'read as 6 3/8 in,'",
        "belt, 200, 'between 11 13/16 in'",
        "right, 50 1/2, 'are 12 1/2 in apart'"
    })
    void aLengthThatCannotBeIsToldInPlaceWithTheOtherUnit(String field, String value, String sentence) {
        Reply form = inches().get(address(with(field, value)));
        assertEquals(422, form.status());
        assertEquals(field, form.page().select(".has-error input").attr("name"));
        assertTrue(form.page().select(".error").text().contains(sentence), form::text);
        assertEquals(value, form.page().select(".has-error input").val());
    }

    @ParameterizedTest
    @CsvSource({"near, 4, 1", "far, 6, 1", "near, junk, 2", "far, 9999, 2"})
    void aDistanceToNothingIsNotDropped(String edge, String value, int faults) {
        Reply form = inches().get(address(with(edge, value)));
        assertEquals(422, form.status());
        assertEquals(faults, form.page().select(".has-error").size(), form::text);
        assertTrue(form.text().contains(Sample.says("sheet.fault.obstacle")), form::text);
        assertEquals(value, form.page().select("[name=" + edge + "]").val());
    }

    @Test
    void everyTypedFieldHasAnEnd() {
        Reply form = inches().get("/sheet");
        assertFalse(form.page().select("input[type=text]").isEmpty());
        assertTrue(form.page().select("input[type=text]:not([maxlength])").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"slope, 60", "slope, steep", "speed, 0", "speed, fast", "speed, 9999", "belt, 999999"})
    void aFigureThatNoConveyorHasIsRefusedInPlace(String field, String value) {
        Reply form = inches().get(address(with(field, value)));
        assertEquals(422, form.status());
        assertEquals(field, form.page().select(".has-error input").attr("name"));
        assertEquals(value, form.page().select(".has-error input").val());
    }

    @Test
    void whatIsImpossibleHasOneSentenceAndTheRestStillStands() {
        Reply sheet = inches().get(address(with("belt", "30")));
        assertEquals(200, sheet.status());
        assertEquals(1, sheet.page().select(".notice-refused li").size());
        assertEquals(Sample.says("sheet.none"), line(sheet, "sheet.line.wall"));
        assertEquals(List.of("43 1/8 in", "43 5/8 in"), row(sheet, "sheet.row.mount-mark"));
    }

    @Test
    void withoutRoomThereIsNoMarkButTheReason() {
        Map<String, String> typed = with("above", "1");
        typed.put("below", "3");
        Reply sheet = inches().get(address(typed));
        assertEquals(List.of("–", "–"), row(sheet, "sheet.row.mount-mark"));
        assertEquals(List.of("3 13/16 in", "3 13/16 in"), row(sheet, "sheet.row.spring"));
        assertFalse(sheet.page().select("svg.drawing").isEmpty());
    }

    @Test
    void somethingInTheWayTurnsTheTensionerOver() {
        Map<String, String> typed = with("obstacle", "above");
        typed.put("near", "4");
        typed.put("far", "6");
        Reply sheet = inches().get(address(typed));
        assertEquals("underslung", line(sheet, "sheet.line.way"));
        typed.put("far", "3");
        assertEquals(422, inches().get(address(typed)).status());
    }

    @Test
    void aKeptSheetIsOpenToTheCrewAndNotThereForOthers() {
        Reply kept = inches().get(address(typedInInches())).sendTo("/sheet");
        assertTrue(kept.path().startsWith("/sheet/saved/"), kept.path());
        Reply supervisor = SITE[0].signIn(SampleSite.SUPERVISOR).get(kept.path());
        assertEquals(List.of("43 1/8 in", "43 5/8 in"), row(supervisor, "sheet.row.mount-mark"));
        assertTrue(
                SITE[0].signIn(SampleSite.SUPERVISOR).get("/sheet/saved").text().contains("Bora, tail end"));
        Browser other = SITE[0].signIn(SampleSite.OTHER_SUPERVISOR);
        assertEquals(404, other.get(kept.path()).status());
        assertFalse(other.get("/sheet/saved").text().contains("Bora, tail end"));
        assertEquals(404, other.get("/sheet/saved/999999").status());
    }

    @Test
    void sendingTwiceKeepsOneSheet() {
        Reply sheet = inches().get(address(with("place", "Zephyr, twice")));
        Reply once = sheet.sendTo("/sheet");
        Reply twice = sheet.sendTo("/sheet");
        assertEquals(once.path(), twice.path());
        String list = inches().get("/sheet/saved").text();
        assertEquals(list.indexOf("Zephyr, twice"), list.lastIndexOf("Zephyr, twice"));
    }

    @Test
    void aSignOffStartsWithTheSheet() {
        Reply kept = SITE[0].signIn(SampleSite.SUPERVISOR)
                .get(address(typedInInches()))
                .sendTo("/sheet");
        String start = kept.page().select("a[href^=/sign-off?]").attr("href");
        Reply fitters = kept.browser().get(start);
        String fitter = fitters.page().select("a.way").attr("href");
        Reply entry = kept.browser().get(fitter);
        assertEquals(200, entry.status());
        assertTrue(entry.path().contains("/wide-belt-rig/carbide"), entry.path());
        assertEquals("Bora, tail end", entry.page().select("[name=conveyor]").val());
        assertEquals("38 1/2 in", entry.page().select("[name=belt-mark-right]").val());
        assertEquals(
                "overslung", entry.page().select("[name=orientation][checked]").val());
        assertEquals("", entry.page().select("[name=mount-mark-right]").val());
        assertTrue(SITE[0].signIn(SampleSite.NEW_HIRE)
                .get(kept.path())
                .page()
                .select("a[href^=/sign-off?]")
                .isEmpty());
    }

    @Test
    void noSignOffStartsWithABladeThatItCannotRecord() {
        Map<String, String> typed = with("blade", "1010 mm");
        Reply kept = SITE[0].signIn(SampleSite.SUPERVISOR).get(address(typed)).sendTo("/sheet");
        assertTrue(kept.page().select("a[href^=/sign-off?]").isEmpty());
        assertTrue(kept.text().contains("No sign-off starts from it"), kept::text);
        assertFalse(inches().get(kept.path()).text().contains("No sign-off starts from it"));
    }

    @Test
    void aBladeReadWithAnInchTapeIsTheBladeOfTheChart() {
        Reply sheet = inches().get(address(with("blade", "39 3/8")));
        assertEquals(Sample.says("setting-from.chart"), line(sheet, "sheet.line.setting-from"));
    }

    @Test
    void changingStartsWithEverythingTyped() {
        Reply sheet = inches().get(address(typedInInches()));
        String change = sheet.page().select("a[href^=\"/sheet?\"]").attr("href");
        Reply form = millimetres().get(change);
        assertEquals("38 1/2 in", form.page().select("[name=right]").val());
        assertEquals("490 ft/min", form.page().select("[name=speed]").val());
        assertEquals("wide-belt-rig", form.page().select("[name=card][checked]").val());
    }

    @Test
    void whatIsNoughtIsNotTold() {
        Map<String, String> typed = with("slope", "0");
        Reply onMark = inches().get(address(typed));
        assertFalse(onMark.text().contains("plumb"), onMark::text);
        assertFalse(onMark.page().html().contains("its mount mark. The splice"), onMark::text);
        typed.put("off", "1/4");
        assertTrue(inches().get(address(typed)).page().html().contains("1/4 in above its mount mark. The splice"));
    }

    @Test
    void everyNumberOfTheStepsIsThere() {
        Reply sheet = inches().get(address(typedInInches()));
        assertTrue(sheet.page().select("details ol li").size() > 20);
        assertTrue(sheet.page().select("details").text().contains("43 1/8 in"));
    }

    @Test
    void todayLeadsToTheSheet() {
        assertFalse(inches().get("/today").page().select("a[href=/sheet]").isEmpty());
    }
}
