package beltmark.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The language before anybody is known. */
class LanguageJourneyTest {

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

    private static String language(Reply reply) {
        return reply.page().select("html").attr("lang");
    }

    @Test
    void followsTheBrowserUntilSomebodyChooses() {
        assertEquals("en", language(site.browser().get("/sign-in")));
        assertEquals(
                "es",
                language(
                        site.browser().with("Accept-Language", "es-MX,es;q=0.9").get("/sign-in")));
        assertEquals(
                "es",
                language(site.browser()
                        .with("Accept-Language", "fr, es-PE;q=0.5")
                        .get("/sign-in")));
        assertEquals(
                "en",
                language(site.browser().with("Accept-Language", "de, *;q=x").get("/sign-in")));
    }

    @Test
    void staysOnThePageWhenChosenAndIsKept() {
        Browser browser = site.browser();
        Reply crews = browser.get("/sign-in?next=/sheet");
        var other = crews.page().select(".languages a[lang=es]");
        assertEquals("Español", other.text());
        Reply spanish = browser.get(other.attr("href"));
        assertEquals("/sign-in?next=/sheet", spanish.path());
        assertEquals("es", language(spanish));
        assertTrue(spanish.text().contains("¿Cuál cuadrilla?"), spanish.text());
        assertEquals("es", language(browser.get("/no-such-page")));
        assertEquals(
                "en", language(browser.get(spanish.page().select(".languages a").attr("href"))));
    }

    @Test
    void aPersonsOwnLanguageGoesBeforeThatOfTheTablet() {
        Browser tablet = site.browser();
        tablet.get("/language/es");
        Reply wrong = site.signIn(tablet, SampleSite.NEW_HIRE, "000000");
        assertEquals("es", language(wrong));
        Reply today = site.signIn(tablet, SampleSite.NEW_HIRE, SampleSite.pin());
        assertEquals("en", language(today));
        assertTrue(today.page().select(".languages").isEmpty());
    }

    @Test
    void aSharedTabletKeepsItsLanguageAfterSignOut() {
        Browser tablet = site.browser();
        tablet.get("/language/es");
        Reply today = site.signIn(tablet, SampleSite.NEW_HIRE, SampleSite.pin());
        String csrf = today.page().select("form[action=/sign-out] [name=csrf]").attr("value");
        Reply out = tablet.ask("POST", "/sign-out", List.of(Map.entry("csrf", csrf)));
        // what the browser does on Clear-Site-Data
        tablet.cookies().clear();
        assertEquals("es", language(tablet.get(out.header("Location"))));
    }

    @Test
    void leadsToNoOtherSiteAndKnowsNoOtherLanguage() {
        assertEquals(404, site.browser().get("/language/xx").status());
        Reply elsewhere = site.browser().ask("GET", "/language/es?next=//elsewhere.example", List.of());
        assertEquals("/today", elsewhere.header("Location"));
    }
}
