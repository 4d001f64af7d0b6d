package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.Problem;
import beltmark.core.solution.Slip;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new hire at work in the browser, with scripts. */
@NeedsChromium
class NewHireBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;
    private static Trainee trainee;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "new-hire");
        trainee = new Trainee(chrome);
        trainee.signIn("Pier crew", SampleSite.NEW_HIRE);
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @Test
    void aSlipIsNamedAndCorrected() {
        Problem problem = trainee.open("mount-marks", "J1");
        Slip slip = trainee.makeASlip(problem);
        assertTrue(chrome.text().contains(Sample.says("problem.slip.mount-mark." + slip.id())), chrome::text);
        trainee.answerRightly(problem);
        assertTrue(chrome.text().contains(Sample.says("practice.done")), chrome::text);
    }

    @Test
    void aWholeSetUpIsWorkedCleanly() {
        trainee.answerRightly(trainee.open("bench", "J2"));
        assertTrue(chrome.text().contains(Sample.says("practice.done-clean")), chrome::text);
    }

    @Test
    void questionsOfTheLockoutQuizAreAnsweredWithTheirParagraphs() {
        trainee.answerQuizQuestions(5);
        assertTrue(chrome.has("fieldset.ask"), chrome::text);
    }

    @Test
    void whatCannotBeReadIsAskedAgainAndKept() {
        trainee.open("spring-length", "J3");
        chrome.fill("both", "4 17/16");
        trainee.check();
        assertEquals("4 17/16", chrome.find("[name=both]").getDomProperty("value"));
        assertTrue(chrome.has("[name=both][aria-invalid=true]"));
    }

    @Test
    void aLengthIsReadBackWhileItIsTyped() {
        trainee.open("spring-length", "J4");
        chrome.fill("both", "5-1/4");
        chrome.waitFor("5 1/4 in (133.35 mm)");
    }

    @Test
    void theOtherPagesOfANewHireAreWhole() {
        chrome.go("/settings");
        chrome.go("/hardware");
        chrome.pressOn("main a[href^='/hardware/']");
        chrome.go("/no-such-page");
    }
}
