package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A supervisor with the board of another day, the job check and what runs out; every page on the way is checked. */
@NeedsChromium
class QualificationBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "qualification");
        new Trainee(chrome).signIn("Pier crew", SampleSite.SUPERVISOR);
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @Test
    void theBoardIsFilteredAndShowsAnotherDay() {
        chrome.go("/board");
        chrome.fill("card", "wide-belt-rig");
        chrome.pressOn(".filter button");
        assertTrue(chrome.text().contains("Wide-belt rig"), chrome::text);
        assertFalse(chrome.has("a[href*='qualification-narrow-belt-rig']"));
        chrome.go("/board?on=2020-03-05");
        assertTrue(chrome.text().contains("Where each person stood on 5 Mar 2020"), chrome::text);
        chrome.pressOn("td.cell a");
        assertTrue(chrome.text().contains("As of 5 Mar 2020."), chrome::text);
        chrome.go("/board?status=held");
        assertTrue(chrome.text().contains("Nobody to show."), chrome::text);
    }

    @Test
    void theJobCheckAnswers() {
        chrome.go("/job-check");
        chrome.fill("card", SampleDemonstration.RIG.split("/", -1)[1]);
        chrome.fill("fitters", "2");
        chrome.pressOn(".filter button");
        assertTrue(chrome.text().contains("Proposed crew"), chrome::text);
        assertTrue(chrome.text().contains(SampleSite.NEW_HIRE), chrome::text);
        assertTrue(chrome.text().contains("does not say that it is safe to start work"), chrome::text);
    }

    @Test
    void aCalendarAddressIsMadeAndRevoked() {
        chrome.go("/expiry");
        chrome.pressOn("form[action='/expiry/calendars'] button");
        assertTrue(chrome.text().contains("/calendar/"), chrome::text);
        chrome.pressOn("form[action$='/revoke'] button");
        assertFalse(chrome.has("form[action$='/revoke']"));
    }
}
