package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drill on a bad network: what is answered is kept, said to be kept, and stored exactly once when the network is back. */
@NeedsChromium
class OutboxBrowserTest {

    private static final String DRILL = "mount-marks";
    private static final String KEPT = Sample.says("outbox.notice.kept");
    private static final String BUTTON = "#now form:first-of-type button";

    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private PackagedSite site;

    @SuppressWarnings("NullAway.Init")
    private Relay network;

    @SuppressWarnings("NullAway.Init")
    private Chrome chrome;

    @SuppressWarnings("NullAway.Init")
    private Trainee trainee;

    private long before;

    @BeforeEach
    void start() throws SQLException {
        site = PackagedSite.start(folder);
        network = Relay.to(site.port());
        chrome = Chrome.start(folder, network.address(), Chrome.Scripts.ON, "outbox");
        chrome.expectNetworkFaults();
        trainee = new Trainee(chrome);
        trainee.signIn("Pier crew", SampleSite.NEW_HIRE);
        before = answers();
    }

    @AfterEach
    void stop() {
        chrome.close();
        network.close();
        site.close();
    }

    @Test
    void aDrillGoesOnWithoutNetworkAndEveryAnswerIsStoredOnce() throws SQLException {
        Problem first = openAndFetchAhead("K1");
        network.cut();
        answerWithoutNetwork(first);
        chrome.pressOn("[data-go-on]");
        Problem second = shown();
        assertTrue(!second.code().equals(first.code()), chrome::path);
        answerWithoutNetwork(second);
        chrome.go(chrome.path());
        chrome.waitFor(KEPT);
        assertTrue(chrome.text().contains(says("outbox.waiting", 2)), chrome::text);
        assertEquals(before, answers());

        network.mend();
        chrome.pressInPlace("[data-send]");
        chrome.waitFor(says("outbox.stored", 2));
        chrome.waitFor(Sample.says("practice.done-clean"));
        assertEquals(before + 2, answers());
    }

    @Test
    void anAnswerWhoseConfirmationWasLostIsStoredOnce() throws SQLException {
        Problem problem = openAndFetchAhead("K2");
        network.loseNextAnswer();
        answerWithoutNetwork(problem);
        assertEquals(before + 1, answers());
        network.mend();
        chrome.pressInPlace("[data-send]");
        chrome.waitFor(says("outbox.stored", 1));
        assertEquals(before + 1, answers());
    }

    @Test
    void twoTabsSendWhatIsKeptOnce() throws SQLException {
        Problem problem = openAndFetchAhead("K3");
        network.cut();
        answerWithoutNetwork(problem);
        chrome.openTab();
        chrome.go("/practice/" + DRILL + "/" + problem.code().text());
        chrome.waitFor(KEPT);
        network.mend();
        chrome.pressInPlace("[data-send]");
        chrome.turnBack();
        chrome.waitFor(says("outbox.stored", 1));
        assertEquals(before + 1, answers());
    }

    @Test
    void whatIsKeptOutlivesAServerThatIsKilled() throws SQLException {
        Problem problem = openAndFetchAhead("K4");
        site.kill();
        answerWithoutNetwork(problem);
        site = PackagedSite.start(folder);
        network.leadTo(site.port());
        chrome.pressInPlace("[data-send]");
        chrome.waitFor(says("outbox.stored", 1));
        assertEquals(before + 1, answers());
    }

    @Test
    void whatIsKeptWaitsForItsPersonAndNobodyElseSendsIt() throws SQLException {
        Problem problem = openAndFetchAhead("K5");
        network.cut();
        answerWithoutNetwork(problem);
        network.mend();
        chrome.forgetWhoIsSignedIn();
        chrome.pressInPlace("[data-send]");
        chrome.waitFor(Sample.says("outbox.sign-in"));
        trainee.signIn("Pier crew", SampleSite.OTHER_NEW_HIRE);
        chrome.waitFor("Kept on this device for another person: 1");
        assertTrue(!chrome.has("#outbox li"));
        assertEquals(before, answers());
        chrome.forgetWhoIsSignedIn();
        trainee.signIn("Pier crew", SampleSite.NEW_HIRE);
        chrome.waitFor(says("outbox.stored", 1));
        assertEquals(before + 1, answers());
    }

    private Problem openAndFetchAhead(String code) {
        Problem problem = trainee.open(DRILL, code);
        chrome.find("#outbox[data-ahead='fetched']");
        return problem;
    }

    private void answerWithoutNetwork(Problem problem) {
        for (Blank blank : problem.parts().get(0).blanks()) {
            trainee.fillRightly(blank);
        }
        chrome.pressInPlace(BUTTON);
        chrome.waitFor(KEPT);
    }

    private Problem shown() {
        return Sample.family(DRILL).problem(new ProblemCode(chrome.path().replaceFirst(".*/", "")));
    }

    private static String says(String key, int count) {
        return Sample.says(key, "count", count);
    }

    private long answers() throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("data/beltmark.db"));
                ResultSet count = connection
                        .createStatement()
                        .executeQuery("SELECT count(*) FROM recordbook_entry WHERE kind = 'practice.answer'")) {
            return count.getLong(1);
        }
    }
}
