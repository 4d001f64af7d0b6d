package beltmark.outbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class OutboxJourneyTest {

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
    void theTokenComesWithThePersonItBelongsTo() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        String[] told = browser.get("/outbox/token").body().split("\n", -1);
        assertEquals(Long.toString(site.personId(SampleSite.NEW_HIRE)), told[0]);
        assertEquals(browser.get("/settings").page().select("[name=csrf]").attr("value"), told[1]);
    }

    @Test
    void aFreshSessionHasAnotherToken() {
        Reply before = site.signIn(SampleSite.NEW_HIRE).get("/outbox/token");
        Reply after = site.signIn(SampleSite.NEW_HIRE).get("/outbox/token");
        assertNotEquals(before.body(), after.body());
    }

    @Test
    void nobodySignedInIsSentToSignInAndGetsNoToken() {
        assertTrue(site.browser().ask("GET", "/outbox/token", List.of()).isRedirect());
    }

    @Test
    void theWorkerIsAskedForAgainEachTime() {
        Reply worker = site.browser().get("/outbox-worker.js");
        assertEquals("no-cache", worker.header("Cache-Control"));
        assertTrue(worker.header("Content-Type").startsWith("text/javascript"));
        assertTrue(worker.header("Content-Security-Policy").contains("connect-src 'self'"));
    }

    @Test
    void everyPageSaysWhoseItIsAndNothingElseOfThePerson() {
        Reply page = site.signIn(SampleSite.NEW_HIRE).get("/today");
        assertEquals(
                Long.toString(site.personId(SampleSite.NEW_HIRE)),
                page.page().select("#outbox").attr("data-person"));
        assertEquals("", site.browser().get("/sign-in").page().select("#outbox").attr("data-person"));
        assertFalse(page.page().select("#outbox").text().contains(SampleSite.NEW_HIRE));
    }
}
