package beltmark.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormTokenTest {

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

    private static final Map<String, String> MILLIMETRES = Map.of("graduation", "millimetre", "language", "en");

    @Test
    void refusesAFormWithoutToken() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply reply = browser.post("/settings", MILLIMETRES);
        assertEquals(403, reply.status());
        assertTrue(
                browser.get("/settings").page().select("[value=sixteenth-inch]").hasAttr("checked"));
    }

    @Test
    void refusesTheTokenOfSomebodyElse() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        String foreign = token(site.signIn(SampleSite.SUPERVISOR).get("/settings"));
        assertEquals(403, browser.post("/settings", with(foreign)).status());
    }

    @Test
    void refusesTheTokenOfBeforeSignIn() {
        Browser browser = site.browser();
        String before = token(browser.get("/sign-in/1/1"));
        site.signIn(browser, SampleSite.NEW_HIRE, SampleSite.pin());
        assertEquals(403, browser.post("/settings", with(before)).status());
    }

    @Test
    void refusesASignInWithoutToken() {
        Browser browser = site.browser();
        long crew = site.crewId(SampleSite.NEW_HIRE);
        long person = site.personId(SampleSite.NEW_HIRE);
        Reply reply = browser.post("/sign-in/" + crew + "/" + person, Map.of("pin", SampleSite.pin()));
        assertEquals(403, reply.status());
        assertFalse(browser.cookies().containsKey("s"));
    }

    @ParameterizedTest
    @CsvSource({
        "Sec-Fetch-Site, cross-site, 403",
        "Sec-Fetch-Site, same-site, 403",
        "Sec-Fetch-Site, same-origin, 200",
        "Origin, https://elsewhere.example, 403",
        "Origin, nonsense, 403",
        "Origin, null, 200"
    })
    void looksWhereAFormComesFrom(String header, String value, int status) {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        String token = token(browser.get("/settings"));
        Reply reply = browser.with(header, value)
                .post("/settings", Map.of("graduation", "sixteenth-inch", "language", "en", "csrf", token));
        assertEquals(status, reply.status());
    }

    @Test
    void showsAgainWhatAStaleFormHeld() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply reply = browser.post("/settings", Map.of("left", "4 3/4 <b>", "pin", "123456", "csrf", "old"));
        assertEquals(403, reply.status());
        assertTrue(reply.text().contains("was not stored"));
        assertEquals("4 3/4 <b>", reply.page().select("dl.typed dd").text());
        assertFalse(reply.body().contains("123456"));
    }

    @Test
    void showsNothingThatAForeignPageSent() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE).with("Sec-Fetch-Site", "cross-site");
        Reply reply = browser.post("/settings", Map.of("left", "4 3/4", "csrf", "old"));
        assertFalse(reply.body().contains("4 3/4"));
    }

    @Test
    void saysThatADeadSessionStoredNothing() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply settings = browser.get("/settings");
        site.clock().move(Duration.ofMinutes(20));
        Reply reply = settings.sendTo("/settings", "graduation", "millimetre", "left", "4 3/4");
        assertEquals(401, reply.status());
        assertTrue(reply.text().contains("was not stored"), reply.text());
        assertTrue(reply.page().select("dl.typed dd").eachText().contains("4 3/4"));
        assertEquals(
                "/sign-in?next=%2Fsettings",
                reply.page().select("main a.button").attr("href"));
    }

    @Test
    void decidesOnTheMethodThatIsRouted() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE).with("X-HTTP-Method-Override", "POST");
        Reply reply = browser.ask("GET", "/settings", java.util.List.of());
        assertTrue(reply.status() == 200 || reply.status() == 403, "status " + reply.status());
    }

    private static String token(Reply page) {
        return page.page().select("main [name=csrf]").attr("value");
    }

    private static Map<String, String> with(String token) {
        return Map.of("graduation", "millimetre", "language", "en", "csrf", token);
    }
}
