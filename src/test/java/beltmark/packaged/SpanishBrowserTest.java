package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spanish words are longer; its pages have to fit a small phone and to be sound all the same. */
@NeedsChromium
class SpanishBrowserTest {

    private static final String CREW = "Pier crew";
    private static final String OFFICE = "Site office";

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        speakSpanish(CREW, SampleSite.NEW_HIRE);
        speakSpanish(CREW, SampleSite.SUPERVISOR);
        speakSpanish(OFFICE, SampleSite.COORDINATOR);
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

    private static void speakSpanish(String crew, String name) {
        site.signIn(crew, name).get("/settings").send("language", "es");
    }

    /** Signs in on a tablet that is set to Spanish. */
    private static void signIn(String crew, String name) {
        chrome.go("/sign-in");
        chrome.pressOn(".languages a[lang=es]");
        chrome.press(crew);
        chrome.press(name);
        chrome.fill("pin", SampleSite.pin());
        chrome.pressOn("main form button");
        assertEquals("/today", chrome.path());
    }

    @Test
    void aNewHireWorksInSpanish() {
        signIn(CREW, SampleSite.NEW_HIRE);
        chrome.go("/practice/bench/7K3M1Q");
        chrome.unfold("details.words");
        chrome.fillAll("left", "1", "right", "1");
        chrome.pressOn("#now form:first-of-type button");
        chrome.go("/lockout");
        chrome.pressOn("main form button");
        chrome.pressOn("main form button");
        assertTrue(chrome.has("html[lang=es]"));
        chrome.go(
                "/sheet/show?card=wide-belt-rig&tip=carbide&blade=1000mm&left=38&right=38.5&slope=12&above=18&below=20"
                        + "&belt=42&inside=48&outside=54&splice=2&speed=490&wander=1&off=1&way=high&obstacle=none");
        chrome.unfold("details.words");
        for (String path : List.of(
                "/practice",
                "/hardware/incline-rig",
                "/sheet",
                "/board/me",
                "/settings",
                "/glossary",
                "/certificate")) {
            chrome.go(path);
        }
    }

    @Test
    void aCoordinatorReadsTheReviewInSpanish() {
        signIn(OFFICE, SampleSite.COORDINATOR);
        chrome.go("/review");
        chrome.go("/board");
        assertTrue(chrome.has("html[lang=es]"));
    }

    @Test
    void aSupervisorWorksInSpanish() {
        signIn(CREW, SampleSite.SUPERVISOR);
        chrome.go("/board");
        chrome.go("/people");
        chrome.go("/sign-off");
        chrome.press(SampleSite.NEW_HIRE);
        chrome.pressOn("a[href$='" + SampleDemonstration.RIG + "']");
        chrome.pressOn("main form button");
        assertTrue(chrome.has("html[lang=es]"));
    }
}
