package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

/** The same work of a new hire in a browser that runs no scripts of pages. */
@NeedsChromium
class NewHireWithoutScriptsBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;
    private static Trainee trainee;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.OFF, "new-hire-without-scripts");
        trainee = new Trainee(chrome);
        trainee.signIn("Pier crew", SampleSite.NEW_HIRE);
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @Test
    void scriptsOfPagesReallyDoNotRun() {
        assertFalse(chrome.runsScripts());
    }

    @Test
    void aSlipIsNamedAndCorrected() {
        Problem problem = trainee.open("mount-marks", "K1");
        Slip slip = trainee.makeASlip(problem);
        assertTrue(chrome.text().contains(Sample.says("problem.slip.mount-mark." + slip.id())), chrome::text);
        trainee.answerRightly(problem);
        assertTrue(chrome.text().contains(Sample.says("practice.done")), chrome::text);
    }

    @Test
    void aWholeSetUpIsWorkedCleanly() {
        trainee.answerRightly(trainee.open("bench", "K2"));
        assertTrue(chrome.text().contains(Sample.says("practice.done-clean")), chrome::text);
    }

    @Test
    void theLockoutQuizIsSatAndPassed() {
        trainee.answerQuizQuestions(Integer.MAX_VALUE);
        assertTrue(chrome.text().contains(Sample.says("lockout.result-page.title.passed")), chrome::text);
    }

    @Test
    void whatCannotBeReadIsAskedAgainAndKept() {
        trainee.open("spring-length", "K3");
        chrome.fill("both", "abc");
        trainee.check();
        assertEquals("abc", chrome.find("[name=both]").getDomProperty("value"));
    }
}
