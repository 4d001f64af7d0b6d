package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spanish words are longer; its pages have to fit a small phone and to be sound all the same. */
@NeedsChromium
class SpanishBrowserTest {

    private static final String CREW = "Pier crew";

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        for (String name : new String[] {SampleSite.NEW_HIRE, SampleSite.SUPERVISOR}) {
            site.signIn(CREW, name).get("/settings").send("language", "es");
        }
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "spanish");
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @BeforeEach
    void leave() {
        chrome.forgetWhoIsSignedIn();
    }

    /** Signs in on a tablet that is set to Spanish. */
    private static void signIn(String name) {
        chrome.go("/sign-in");
        chrome.pressOn(".languages a[lang=es]");
        chrome.press(CREW);
        chrome.press(name);
        chrome.fill("pin", SampleSite.pin());
        chrome.pressOn("main form button");
        assertEquals("/today", chrome.path());
    }

    @Test
    void aNewHireWorksInSpanish() {
        signIn(SampleSite.NEW_HIRE);
        chrome.go("/practice/bench/7K3M1Q");
        chrome.unfold("details.words");
        chrome.fillAll("left", "1", "right", "1");
        chrome.pressOn("#now form:first-of-type button");
        chrome.go("/lockout");
        chrome.pressOn("main form button");
        chrome.pressOn("main form button");
        assertTrue(chrome.has("html[lang=es]"));
        for (String path : new String[] {"/hardware/incline-rig", "/sheet", "/board/me", "/settings", "/glossary"}) {
            chrome.go(path);
        }
    }

    @Test
    void aSupervisorWorksInSpanish() {
        signIn(SampleSite.SUPERVISOR);
        chrome.go("/board");
        chrome.go("/people");
        chrome.go("/sign-off");
        chrome.press(SampleSite.NEW_HIRE);
        chrome.pressOn("a[href$='" + SampleDemonstration.RIG + "']");
        chrome.pressOn("main form button");
        assertTrue(chrome.has("html[lang=es]"));
    }
}
