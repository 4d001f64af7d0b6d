package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import beltmark.lockout.QuizTaker;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The people who need a new hire's record, at work in the browser; the new hire has failed the quiz by one question. */
@NeedsChromium
class CrewBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;
    private static Trainee person;
    private static String missed = "";

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        missed = QuizTaker.sitMissingOneCritical(site.signIn("Pier crew", SampleSite.NEW_HIRE));
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "crew");
        person = new Trainee(chrome);
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

    @Test
    void aSupervisorSignsOffADemonstrationAndFindsItOnTheBoard() {
        person.signIn("Pier crew", SampleSite.SUPERVISOR);
        chrome.go("/sign-off");
        chrome.press(SampleSite.NEW_HIRE);
        chrome.pressOn("a[href$='" + SampleDemonstration.RIG + "']");
        chrome.fillAll(SampleDemonstration.within("spring-left", "9"));
        chrome.pressOn("main form button");
        assertTrue(chrome.has(".status-wrong, .has-error"), chrome::text);
        chrome.fillAll(SampleDemonstration.within());
        chrome.pressOn("main form button");
        chrome.fill("pin", SampleSite.pin());
        chrome.pressOn(".signature form button");
        assertTrue(chrome.text().contains("Stored as record"), chrome::text);
        chrome.pressOn("main a[href^='/board/']");
        assertTrue(chrome.text().contains(SampleSite.NEW_HIRE), chrome::text);
        chrome.go("/board");
        assertTrue(chrome.text().contains(SampleSite.NEW_HIRE), chrome::text);
    }

    @Test
    void theCoordinatorSeesWhoMissedWhatInTheQuiz() {
        person.signIn("Site office", SampleSite.COORDINATOR);
        chrome.go("/review");
        assertTrue(chrome.text().contains(missed), chrome::text);
        chrome.pressInRow(SampleSite.NEW_HIRE);
        assertTrue(chrome.text().contains(SampleSite.NEW_HIRE), chrome::text);
    }

    @Test
    void aSupervisorGivesOutANewPin() {
        person.signIn("Pier crew", SampleSite.SUPERVISOR);
        chrome.go("/people");
        chrome.pressOn("main form button");
    }
}
