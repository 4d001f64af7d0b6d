package beltmark.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SignInJourneyTest {

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
    void signsInByCrewNameAndPin() {
        Browser browser = site.browser();
        Reply crews = browser.get("/");
        String crew = link(crews, "Pier crew");
        Reply names = browser.get(crew);
        Reply pin = browser.get(link(names, SampleSite.NEW_HIRE));
        Reply today = pin.send("pin", SampleSite.pin());
        assertEquals("/today", today.path());
        assertTrue(today.text().contains(SampleSite.NEW_HIRE));
        assertTrue(today.text().contains("Demo data"));
    }

    @Test
    void comesBackToTheWantedPage() {
        Browser browser = site.browser();
        Reply crews = browser.get("/settings?stored=settings");
        Reply names = browser.get(link(crews, "Pier crew"));
        Reply settings = browser.get(link(names, SampleSite.NEW_HIRE)).send("pin", SampleSite.pin());
        assertEquals("/settings?stored=settings", settings.path());
    }

    @Test
    void neverLeadsToAnotherSite() {
        for (String next :
                List.of("//elsewhere.example", "https://elsewhere.example", "/\\elsewhere.example", "/a b")) {
            assertEquals("/today", NextPath.of(next).value());
        }
        assertEquals("/lockout?x=1", NextPath.of("/lockout?x=1").value());
    }

    @Test
    void saysTheSameForWrongAndForUnknown() {
        Browser browser = site.browser();
        Reply wrong = site.signIn(browser, SampleSite.OTHER_NEW_HIRE, "000000");
        assertEquals(422, wrong.status());
        assertTrue(wrong.text().contains("not right, or it is locked"));
        assertFalse(browser.cookies().containsKey("s"));
    }

    @Test
    void givesANewTokenAtSignIn() {
        Browser browser = site.browser();
        String planted = "x".repeat(43);
        browser.cookies().put("s", planted);
        Reply today = site.signIn(browser, SampleSite.NEW_HIRE, SampleSite.pin());
        assertEquals("/today", today.path());
        assertNotEquals(planted, browser.cookies().get("s"));
        Browser attacker = site.browser();
        attacker.cookies().put("s", planted);
        assertTrue(attacker.get("/today").path().startsWith("/sign-in"));
    }

    @Test
    void endsTheSessionAtTheServerWhenSigningOut() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        String token = browser.cookies().getOrDefault("s", "");
        Reply page = browser.get("/today");
        String csrf = page.page().select("form[action=/sign-out] [name=csrf]").attr("value");
        Reply out = browser.ask("POST", "/sign-out", List.of(Map.entry("csrf", csrf)));
        assertEquals("\"cache\", \"cookies\"", out.header("Clear-Site-Data"));
        Browser thief = site.browser();
        thief.cookies().put("s", token);
        assertTrue(thief.get("/today").path().startsWith("/sign-in"));
    }

    @Test
    void endsTheSessionOfWhoeverUsedTheBrowserBefore() {
        Browser tablet = site.signIn(SampleSite.NEW_HIRE);
        Browser thief = site.browser();
        thief.cookies().put("s", tablet.cookies().getOrDefault("s", ""));
        assertEquals(
                "/today",
                site.signIn(tablet, SampleSite.SUPERVISOR, SampleSite.pin()).path());
        assertTrue(thief.get("/today").path().startsWith("/sign-in"));
    }

    @Test
    void asksForSixDigitsWithoutTakingATry() {
        Reply blank = site.signIn(site.browser(), SampleSite.NEW_HIRE, "");
        assertEquals(422, blank.status());
        assertTrue(blank.text().contains("Enter your six-digit PIN."), blank.text());
    }

    @Test
    void endsAnIdleSession() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        site.clock().move(Duration.ofMinutes(14));
        assertEquals("/today", browser.get("/today").path());
        site.clock().move(Duration.ofMinutes(16));
        assertTrue(browser.get("/today").path().startsWith("/sign-in"));
    }

    @Test
    void endsEverySessionAfterTwelveHours() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        for (int i = 0; i < 73; i++) {
            site.clock().move(Duration.ofMinutes(10));
            browser.get("/today");
        }
        assertTrue(browser.get("/today").path().startsWith("/sign-in"));
    }

    @Test
    void keepsNoTokenInTheDatabase() {
        Browser browser = site.signIn(SampleSite.SUPERVISOR);
        String token = browser.cookies().getOrDefault("s", "");
        long found = site.database()
                .read(handle -> handle.createQuery(
                                "SELECT count(*) FROM people_session WHERE CAST(token_hash AS TEXT) LIKE '%' || :token || '%'")
                        .bind("token", token)
                        .mapTo(Long.class)
                        .one());
        assertEquals(0, found);
    }

    private static String link(Reply page, String text) {
        return page.page().select("a:contains(" + text + ")").attr("href");
    }
}
