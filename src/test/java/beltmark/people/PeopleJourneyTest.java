package beltmark.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@SuppressWarnings("NullAway.Init")
class PeopleJourneyTest {

    private SampleSite site;

    @BeforeEach
    void start() {
        site = SampleSite.start();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private String resetAction(String name) {
        return "/people/" + site.personId(name) + "/reset-pin";
    }

    @Test
    void supervisorResetsAPinAndThePersonChoosesTheirOwn() {
        Browser before = site.signIn(SampleSite.NEW_HIRE);
        Reply people = site.signIn(SampleSite.SUPERVISOR).get("/people");
        Reply reset = people.sendTo(resetAction(SampleSite.NEW_HIRE));
        String given = reset.page().select(".shown-once").text();
        assertTrue(given.matches("\\d{6}"), given);
        assertTrue(before.get("/today").path().startsWith("/sign-in"), "the old session has ended");

        Browser browser = site.browser();
        assertEquals(
                422, site.signIn(browser, SampleSite.NEW_HIRE, SampleSite.pin()).status());
        Reply choose = site.signIn(browser, SampleSite.NEW_HIRE, given);
        assertTrue(choose.text().contains("Choose your own PIN"), choose.text());
        assertFalse(browser.cookies().containsKey("s"));
        assertEquals(
                422,
                choose.send("new-pin", "123456", "again-pin", "123456", "pin", given)
                        .status());
        assertEquals(
                422,
                choose.send("new-pin", "830617", "again-pin", "830618", "pin", given)
                        .status());
        assertEquals(
                422,
                choose.send("new-pin", given, "again-pin", given, "pin", given).status());
        Reply today = choose.send("new-pin", "830617", "again-pin", "830617", "pin", given);
        assertEquals("/today", today.path());
        assertEquals(
                "/today",
                site.signIn(site.browser(), SampleSite.NEW_HIRE, "830617").path());
    }

    @Test
    void resetIsRecordedOnceWithoutThePin() {
        Reply people = site.signIn(SampleSite.SUPERVISOR).get("/people");
        String given = people.sendTo(resetAction(SampleSite.NEW_HIRE))
                .page()
                .select(".shown-once")
                .text();
        Reply again = people.sendTo(resetAction(SampleSite.NEW_HIRE));
        assertTrue(again.text().contains("sent already"), again.text());
        String body = site.database()
                .read(handle -> handle.createQuery("SELECT body FROM recordbook_entry WHERE kind = 'people.pin-reset'")
                        .mapTo(String.class)
                        .one());
        assertFalse(body.contains(given), body);
        assertTrue(
                site.signIn(site.browser(), SampleSite.NEW_HIRE, given).text().contains("Choose your own PIN"));
    }

    @Test
    void nobodyResetsTheirOwnPin() {
        Browser browser = site.signIn(SampleSite.SUPERVISOR);
        Reply people = browser.get("/people");
        assertTrue(people.page()
                .select("form[action=" + resetAction(SampleSite.SUPERVISOR) + "]")
                .isEmpty());
        assertEquals(404, forged(browser, people, SampleSite.SUPERVISOR).status());
    }

    @Test
    void supervisorsResetOnlyTheirOwnCrew() {
        Browser browser = site.signIn(SampleSite.OTHER_SUPERVISOR);
        Reply people = browser.get("/people");
        assertFalse(people.text().contains(SampleSite.NEW_HIRE));
        assertEquals(404, forged(browser, people, SampleSite.NEW_HIRE).status());
    }

    @Test
    void adminResetsAnybodyElse() {
        Browser browser = site.signIn(SampleSite.ADMIN);
        Reply people = browser.get("/people");
        assertTrue(people.sendTo(resetAction(SampleSite.SUPERVISOR))
                .page()
                .select(".shown-once")
                .hasText());
        assertEquals(404, forged(browser, people, SampleSite.ADMIN).status());
    }

    private Reply forged(Browser browser, Reply people, String name) {
        String csrf = people.page().select("main [name=csrf]").attr("value");
        String operation = people.page().select("[name=operation]").attr("value");
        return browser.post(resetAction(name), Map.of("csrf", csrf, "operation", operation));
    }

    @Test
    void settingsChangeHowLengthsAreRead() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        assertEquals(
                "Read as 4 3/4 in (120.65 mm).",
                browser.get("/reading?typed=4.75").body());
        Reply kept = browser.get("/settings").send("graduation", "millimetre");
        assertTrue(kept.text().contains("Settings kept."));
        assertTrue(kept.page().select("[value=millimetre]").hasAttr("checked"));
        assertEquals(
                "Read as 120.65 mm (4 3/4 in).",
                browser.get("/reading?typed=120.65").body());
    }

    @Test
    void settingsRefuseWhatIsNotOffered() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply graduation = browser.get("/settings").send("graduation", "sixty-fourth-inch");
        assertEquals(422, graduation.status());
        assertTrue(graduation.text().contains("Pick one of the choices shown."));
        Reply language = browser.get("/settings").send("language", "fr");
        assertEquals(422, language.status());
        assertEquals("language", language.page().select("[autofocus]").attr("name"));
        assertTrue(
                language.page().title().startsWith("Error: "), language.page().title());
        assertFalse(browser.get("/settings").page().title().startsWith("Error"));
    }

    @Test
    void changingThePinEndsOtherSessionsAndNotThisOne() {
        Browser other = site.signIn(SampleSite.NEW_HIRE);
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply wrong = browser.get("/settings").send("new-pin", "830617", "again-pin", "830617", "pin", "000000");
        assertEquals(422, wrong.status());
        assertEquals("pin", wrong.page().select("[autofocus]").attr("name"));
        assertTrue(browser.get("/settings")
                .send("new-pin", "830617", "again-pin", "830617", "pin", "")
                .text()
                .contains("Enter your six-digit PIN."));
        Reply changed =
                browser.get("/settings").send("new-pin", "830617", "again-pin", "830617", "pin", SampleSite.pin());
        assertTrue(changed.text().contains("PIN changed"), changed.text());
        assertEquals("/today", browser.get("/today").path());
        assertTrue(other.get("/today").path().startsWith("/sign-in"));
    }

    @Test
    void lockedPinSaysTheSameAsAWrongOne() {
        Browser browser = site.browser();
        String first = site.signIn(browser, SampleSite.NEW_HIRE, "000000")
                .page()
                .select("main")
                .text();
        for (int i = 0; i < 9; i++) {
            site.signIn(browser, SampleSite.NEW_HIRE, "000000");
        }
        site.clock().move(Duration.ofMinutes(1));
        Reply locked = site.signIn(browser, SampleSite.NEW_HIRE, SampleSite.pin());
        assertEquals(first, locked.page().select("main").text());
        assertEquals(422, locked.status());
    }

    @Test
    void oneTabletCannotLockTheWholeCrew() {
        Browser tablet = site.browser();
        for (int i = 0; i < 5; i++) {
            site.signIn(tablet, SampleSite.NEW_HIRE, "000000");
            site.signIn(tablet, SampleSite.OTHER_NEW_HIRE, "000000");
        }
        Reply refused = site.signIn(tablet, SampleSite.SUPERVISOR, SampleSite.pin());
        assertEquals(429, refused.status());
        site.clock().move(Duration.ofMinutes(1));
        assertEquals(
                "/today",
                site.signIn(tablet, SampleSite.SUPERVISOR, SampleSite.pin()).path());
    }

    @Test
    void aWholeCrewSignsInFromOneTabletWithinAMinute() {
        for (int i = 0; i < 12; i++) {
            Browser tablet = site.browser();
            assertEquals(
                    "/today",
                    site.signIn(tablet, SampleSite.NEW_HIRE, SampleSite.pin()).path());
        }
    }
}
