package beltmark.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import beltmark.core.qualification.Status;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Verification;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DemoYearTest {

    private static SampleSite site;

    @BeforeAll
    static void start() {
        site = SampleSite.startWithPastYear();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void everyEventOfTheFileIsRecorded() {
        DemoYear year = DemoYear.read();
        int problems = year.practice().stream()
                .mapToInt(day -> day.families().size() * (day.clean() + day.slips()))
                .sum();
        assertEquals(problems, count("practice_attempt WHERE finished_at_ms IS NOT NULL"));
        assertEquals(year.lockout().size(), count("recordbook_entry WHERE kind = 'lockout.result'"));
        assertEquals(year.demonstrations().size(), count("recordbook_entry WHERE kind = 'signoff.demonstration'"));
    }

    @Test
    void theBookOfTheYearVerifies() {
        Verification verification = site.database().read(handle -> new RecordBook(site.clock()).verify(handle));
        assertTrue(verification.isUnchanged(), verification::toString);
    }

    @Test
    void theYearLiesInThePast() {
        long now = site.clock().millis();
        assertEquals(0, count("recordbook_entry WHERE recorded_at_ms > " + now));
    }

    @Test
    void theBoardShowsIt() {
        String board = site.signIn(SampleSite.SUPERVISOR).get("/board").text();
        assertTrue(board.contains("cleared until"), board);
    }

    @Test
    void everyStatusIsSomewhereOnTheBoard() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);
        for (Status status : Status.values()) {
            Reply board = coordinator.get("/board?status=" + status.id());
            assertFalse(board.page().select("td.stands-" + status.id()).isEmpty(), status.id());
        }
    }

    @Test
    void theOrderThatHoldsSomebodyIsBehindTheCell() {
        Reply evidence = site.signIn(SampleSite.COORDINATOR)
                .get("/board/" + site.personId("Yusuf Demirkan") + "/qualification-lockout");
        assertTrue(evidence.text().contains("Retraining ordered: held back since 21 Feb 2026."), evidence.text());
        assertTrue(evidence.text().contains("His lock was left off"), evidence.text());
        assertTrue(evidence.text().contains("by Hanneke Visser"), evidence.text());
    }

    private static int count(String from) {
        return site.database()
                .read(handle -> handle.createQuery("SELECT count(*) FROM " + from)
                        .mapTo(Integer.class)
                        .one());
    }
}
