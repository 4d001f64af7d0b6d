package beltmark.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import java.time.LocalDate;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SignoffJourneyTest {

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void aDemonstrationIsCheckedSignedAndReadBack() {
        Browser browser = site.signIn(SampleSite.SUPERVISOR);
        Reply who = browser.get("/sign-off");
        assertFalse(who.page().select("main").text().contains(SampleSite.SUPERVISOR));
        Reply which = browser.get(link(who, SampleSite.NEW_HIRE));
        Reply form = browser.get(
                which.page().select("a[href$=/narrow-belt-rig/carbide]").attr("href"));
        long before = records();

        Reply check = form.send(SampleDemonstration.within());
        assertEquals(200, check.status());
        assertEquals(11, check.page().select(".status-right").size());
        assertTrue(check.text().contains("watched " + SampleSite.NEW_HIRE), check.text());
        assertEquals(before, records());

        Reply signed = check.send("pin", SampleSite.pin());
        assertEquals(200, signed.status());
        assertEquals(before + 1, records());
        assertTrue(signed.text().contains("Stored as record " + lastRecord()));
        assertTrue(signed.text().contains("28 11/16 in"));
    }

    @Test
    void theRecordKeepsWhatWasTypedReadAndWanted() {
        SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);
        String body = site.database()
                .read(handle -> handle.createQuery("SELECT body FROM recordbook_entry WHERE seq = :seq")
                        .bind("seq", lastRecord())
                        .mapTo(String.class)
                        .one());
        assertTrue(body.contains("\"typed\":\"28 11/16 in\""), body);
        assertTrue(body.contains("\"assessor\":\"" + SampleSite.SUPERVISOR + "\""), body);
        assertTrue(body.contains("\"cardVersion\":1"), body);
        assertTrue(body.contains("With my PIN I sign this"), body);
        assertEquals(8, count("SELECT count(*) FROM signoff_measure WHERE seq = " + lastRecord()));
    }

    @Test
    void aDoubleSubmitMakesOneRecord() {
        Reply check = form(SampleSite.NEW_HIRE).send(SampleDemonstration.within());
        long before = records();
        Reply once = check.send("pin", SampleSite.pin());
        Reply twice = check.send("pin", SampleSite.pin());
        assertEquals(before + 1, records());
        assertEquals(once.path(), twice.path());
    }

    @Test
    void aFormSignedOnceIsNotSignedAgainWithOtherFigures() {
        Reply form = form(SampleSite.NEW_HIRE);
        form.send(SampleDemonstration.within()).send("pin", SampleSite.pin());
        long before = records();
        Reply again = form.send(SampleDemonstration.within("conveyor", "Bora")).send("pin", SampleSite.pin());
        assertEquals(422, again.status());
        assertTrue(again.text().contains("that record stands"));
        assertEquals(before, records());
    }

    @ParameterizedTest
    @CsvSource({"000000, The PIN is not right", "'', Enter your six-digit PIN", "letters, Enter your six-digit PIN"})
    void aWrongPinStoresNothingAndKeepsEverything(String pin, String sentence) {
        Reply check = form(SampleSite.NEW_HIRE).send(SampleDemonstration.within());
        long before = records();
        Reply refused = check.send("pin", pin);
        assertEquals(422, refused.status());
        assertEquals(before, records());
        assertTrue(refused.text().contains(sentence));
        assertEquals(
                "28 11/16 in",
                refused.page().select("[type=hidden][name=mount-mark-right]").attr("value"));
        assertEquals("", refused.page().select("[name=pin]").attr("value"));
        assertEquals("pin", refused.page().select("[autofocus]").attr("name"));
        assertEquals(200, refused.send("pin", SampleSite.pin()).status());
        assertEquals(before + 1, records());
    }

    @ParameterizedTest
    @CsvSource({
        "mount-mark-left, 28 1/2, 1/8 in too high",
        "mount-mark-left, 24 3/4, offset of the other way round",
        "mount-mark-right, 28 3/8, belt mark of the other side",
        "spring-left, 3 11/16, washer was left out",
        "spring-right, 3 15/16, 1/8 in too long",
        "sleeve-right, 1 5/8, 1/4 in too much showing"
    })
    void outOfToleranceCannotBeSignedAndSaysWhy(String field, String value, String sentence) {
        Reply check = form(SampleSite.NEW_HIRE).send(SampleDemonstration.within(field, value));
        assertEquals(422, check.status());
        assertTrue(check.text().contains(sentence), check.text());
        assertTrue(check.page().select("[name=pin]").isEmpty());
        assertEquals(value, check.page().select("[name=" + field + "]").attr("value"));
        assertEquals(422, signDirectly(field, value).status());
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "mount-mark-left, four, not a length",
                "mount-mark-left, 4 17/16, one or more",
                "spring-left, 1/0, cannot have 0",
                "spring-left, -3, minus sign",
                "spring-left, ||, Enter a length",
                "belt-mark-left, 3 furlongs, unit is not known",
                "belt-mark-left, 730, you meant the other unit",
                "mount-mark-left, 720.7, you meant the other unit",
                "spring-right, 97, you meant the other unit",
                "sleeve-left, 300, cannot be right for this measure",
                "blade, ||, Choose the blade",
                "blade, 123, Choose the blade",
                "orientation, sideways, which way round",
                "conveyor, ||, Enter the conveyor",
                "on, 2026-03-06, Choose the day",
                "on, 2026-02-25, Choose the day",
                "on, yesterday, Choose the day",
                "seen-tried-out, dreamt, Only what you saw",
                "seen-tried-out, ||, Only what you saw",
                "trained, ||, Choose one of the two",
                "edge-left, 2 furlongs, unit is not known",
                "blade-angle, steep, angle in degrees",
                "blade-angle, 7, angle in degrees",
                "bounce, ||, Choose what came",
                "splice, 9 in, cannot be right",
                "explain-splice, short, at least 10 characters"
            })
    void whatCannotBeReadIsToldInPlaceAndEverythingStays(String field, String value, String sentence) {
        long before = records();
        Reply again = form(SampleSite.NEW_HIRE).send(SampleDemonstration.within(field, value));
        assertEquals(422, again.status());
        assertTrue(again.page().select(".error").text().contains(sentence), again.text());
        assertEquals(
                "28 11/16 in", again.page().select("[name=mount-mark-right]").attr("value"));
        assertEquals(before, records());
    }

    @Test
    void averyLongTextIsRefusedWithASentence() {
        Reply again = form(SampleSite.NEW_HIRE)
                .send(SampleDemonstration.within("spring-left", "9".repeat(10_000), "conveyor", "x".repeat(61)));
        assertEquals(422, again.status());
        assertTrue(again.text().contains("more than any length needs"));
        assertTrue(again.text().contains("at most 60 characters"));
    }

    @Test
    void aDemonstrationOfSevenDaysAgoIsKeptUnderItsDay() {
        LocalDate on = LocalDate.of(2026, 2, 26);
        Reply signed = form(SampleSite.OTHER_NEW_HIRE)
                .send(SampleDemonstration.within("on", on.toString()))
                .send("pin", SampleSite.pin());
        assertEquals(200, signed.status());
        assertTrue(signed.text().contains("26 Feb 2026"));
        assertEquals(1, count("SELECT count(*) FROM signoff_demonstration WHERE happened_on = '2026-02-26'"));
    }

    @Test
    void nobodySignsOffThemselvesByAnyPath() {
        Browser browser = site.signIn(SampleSite.SUPERVISOR);
        String own = "/sign-off/" + site.personId(SampleSite.SUPERVISOR);
        long before = records();
        assertEquals(403, browser.get(own).status());
        assertEquals(403, browser.get(own + SampleDemonstration.RIG).status());
        Reply other = form(SampleSite.NEW_HIRE);
        assertEquals(403, sendElsewhere(other, own + SampleDemonstration.RIG).status());
        Reply check = other.send(SampleDemonstration.within());
        assertEquals(
                403,
                sendElsewhere(check, own + SampleDemonstration.RIG + "/sign").status());
        assertEquals(before, records());
    }

    @Test
    void theDatabaseRefusesSelfSignOffToo() {
        long self = site.personId(SampleSite.SUPERVISOR);
        String row = "INSERT INTO signoff_demonstration VALUES (1, " + self + ", " + self
                + ", 'c', 1, 'carbide', 1, 'overslung', 'Bora', '2026-03-05')";
        String entry =
                "INSERT INTO recordbook_entry SELECT seq + 1, 1, 'signoff.demonstration', 'x', " + self + ", " + self
                        + ", 0, recorded_at_ms, '{}', hash, randomblob(32) FROM recordbook_entry ORDER BY seq DESC LIMIT 1";
        for (String statement : new String[] {row, entry}) {
            assertThrows(
                    CompletionException.class,
                    () -> site.database()
                            .write(handle -> handle.execute(statement))
                            .join());
        }
    }

    @Test
    void anotherCrewIsNotFound() {
        Browser browser = site.signIn(SampleSite.OTHER_SUPERVISOR);
        String path = "/sign-off/" + site.personId(SampleSite.NEW_HIRE);
        assertEquals(404, browser.get(path).status());
        assertEquals(404, browser.get(path + SampleDemonstration.RIG).status());
        Reply own = browser.get("/sign-off/" + site.personId("Linh Tranh") + SampleDemonstration.RIG);
        assertEquals(404, sendElsewhere(own, path + SampleDemonstration.RIG).status());
        Reply check = own.send(SampleDemonstration.within());
        assertEquals(
                404,
                sendElsewhere(check, path + SampleDemonstration.RIG + "/sign").status());
    }

    @Test
    void aRecordIsShownOnlyToWhoSignedIt() {
        Reply signed = SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);
        assertEquals(
                404, site.signIn(SampleSite.OTHER_SUPERVISOR).get(signed.path()).status());
        assertEquals(403, site.signIn(SampleSite.NEW_HIRE).get(signed.path()).status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sign-off/1/moon-rig/carbide",
                "/sign-off/2/narrow-belt-rig/glass",
                "/sign-off/99999",
                "/sign-off/x"
            })
    void whatDoesNotExistIsNotFound(String path) {
        assertEquals(404, site.signIn(SampleSite.SUPERVISOR).get(path).status());
    }

    private static Reply form(String person) {
        return site.signIn(SampleSite.SUPERVISOR).get("/sign-off/" + site.personId(person) + SampleDemonstration.RIG);
    }

    /** Signs without going by the check page, which would not offer it. */
    private static Reply signDirectly(String field, String value) {
        Reply form = form(SampleSite.NEW_HIRE);
        String[] within = SampleDemonstration.within(field, value, "pin", SampleSite.pin());
        return form.sendElsewhere(form.path() + "/sign", within);
    }

    private static Reply sendElsewhere(Reply page, String path) {
        return page.sendElsewhere(path, SampleDemonstration.within("pin", SampleSite.pin()));
    }

    private static String link(Reply page, String text) {
        return page.page().select("a:contains(" + text + ")").attr("href");
    }

    private static long records() {
        return count("SELECT count(*) FROM recordbook_entry WHERE kind = 'signoff.demonstration'");
    }

    private static long lastRecord() {
        return count("SELECT max(seq) FROM recordbook_entry");
    }

    private static long count(String sql) {
        return site.database()
                .read(handle -> handle.createQuery(sql).mapTo(Long.class).one());
    }
}
