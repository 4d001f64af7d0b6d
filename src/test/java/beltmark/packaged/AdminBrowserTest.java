package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.SampleSite;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An admin in the browser: a list of people, one person's crews, and the own records. */
@NeedsChromium
class AdminBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;
    private static Trainee person;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "admin");
        person = new Trainee(chrome);
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @BeforeEach
    void signIn() {
        chrome.forgetWhoIsSignedIn();
        person.signIn("Site office", SampleSite.ADMIN);
    }

    @Test
    void aListOfPeopleIsLookedAtChangedAndStored() {
        chrome.go("/people");
        chrome.press("Add people");
        chrome.fill("roster", "name,crew,roles\nAna Beltrán,Night crew,boss\nTomasz Wilk,Night crew,supervisor");
        chrome.pressOn("main form button");
        assertTrue(chrome.text().contains("There is no role “boss”."), chrome::text);
        chrome.pressOn("main form[action$=again] button");
        chrome.fill("roster", "name,crew,roles\nAna Beltrán,Night crew,\nTomasz Wilk,Night crew,supervisor");
        chrome.pressOn("main form button");
        chrome.pressOn("main form[action$=confirm] button");
        assertTrue(chrome.text().contains("2 people are on the site"), chrome::text);
    }

    @Test
    void onePersonIsMovedAndLeaves() {
        chrome.go("/people");
        chrome.press(SampleSite.OTHER_NEW_HIRE);
        chrome.pressOn("form[action$=move] button");
        assertTrue(chrome.text().contains("since"), chrome::text);
        chrome.pressOn("form[action$=leave] button");
        assertTrue(chrome.text().contains("Coming back"), chrome::text);
        chrome.go("/people/gone");
        assertTrue(chrome.text().contains(SampleSite.OTHER_NEW_HIRE), chrome::text);
    }
}
