package beltmark.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser.Reply;
import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a demonstration comes out: passed, passed with something explained, not passed. */
class OutcomeJourneyTest {

    private static final String EXPLANATION =
            "The structure is welded here; the offset was agreed with the site engineer.";

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

    @ParameterizedTest
    @CsvSource({"no, No", "not-seen, Not seen"})
    void aCriticalObservationWithoutAYesIsSignedAsNotPassed(String answer, String word) {
        Reply check = form().send(SampleDemonstration.within("seen-tried-out", answer));
        assertEquals(200, check.status());
        assertTrue(check.text().contains("Not passed"), check.text());
        long passed = count("signoff_demonstration");
        long before = count("signoff_not_passed");
        Reply signed = check.send("pin", SampleSite.pin());
        assertEquals(200, signed.status());
        assertTrue(signed.text().contains("it did not start. Answer: " + word), signed.text());
        assertTrue(signed.text().contains("it was not passed"), signed.text());
        assertEquals(before + 1, count("signoff_not_passed"));
        assertEquals(passed, count("signoff_demonstration"));
        assertEquals("tried-out", text("SELECT missed FROM signoff_not_passed WHERE seq = " + last()));
        assertEquals(0, number("SELECT count(*) FROM qualification_fact WHERE seq = " + last()));
        assertTrue(evidence().contains("not passed"), evidence());
        assertTrue(evidence().contains("it did not start. " + word), evidence());
    }

    @Test
    void whatWasNotPassedNeedsNoMeasures() {
        List<String> fields = new ArrayList<>(List.of(SampleDemonstration.within("seen-locked-each-device", "no")));
        for (String measured : DemonstrationForm.measured()) {
            fields.set(fields.indexOf(measured) + 1, "");
        }
        Reply signed = form().send(fields.toArray(String[]::new)).send("pin", SampleSite.pin());
        assertEquals(200, signed.status());
        assertTrue(signed.page().select("table").isEmpty());
    }

    @Test
    void anotherObservationMayBeMissingAndIsShownWithItsAnswer() {
        Reply signed = form().send(SampleDemonstration.within("seen-kit-checked", "not-seen"))
                .send("pin", SampleSite.pin());
        assertTrue(signed.text().contains("Not seen. The person checked the kit"), signed.text());
        assertEquals(1, number("SELECT count(*) FROM signoff_demonstration WHERE seq = " + last()));
    }

    @Test
    void whatIsBeyondAndExplainedIsSignedAndFlagged() {
        Reply check = form().send(SampleDemonstration.within("mount-mark-left", "28 1/2"));
        assertEquals(422, check.status());
        assertFalse(check.page().select("[name=explain-mount-mark-left]").isEmpty());
        Reply again = check.send("explain-mount-mark-left", EXPLANATION);
        assertEquals(200, again.status());
        assertTrue(again.text().contains("but for what I explain"), again.text());
        Reply signed = again.send("pin", SampleSite.pin());
        assertTrue(signed.text().contains(EXPLANATION), signed.text());
        assertTrue(signed.page().select(".flags").text().contains("explained, not corrected"));
        assertEquals(1, flags("explained"));
        String evidence = evidence();
        assertTrue(evidence.contains(EXPLANATION), evidence);
        assertTrue(evidence.contains("explained, not corrected"), evidence);
    }

    @ParameterizedTest
    @CsvSource({
        "edge-left, 7, Too far off the middle",
        "blade-angle, 80, Not at the angle wanted",
        "bounce, one-side, One side came back later",
        "splice, 1 1/2, would not pass"
    })
    void aReadingAtTheBladeThatIsBeyondCannotBeSignedUnexplained(String field, String value, String sentence) {
        Reply check = form().send(SampleDemonstration.within(field, value));
        assertEquals(422, check.status());
        assertTrue(check.text().contains(sentence), check.text());
        assertTrue(check.page().select("[name=pin]").isEmpty());
    }

    @Test
    void whoeverTrainedThePersonIsFlagged() {
        Reply check = form().send(SampleDemonstration.within("trained", "yes"));
        assertTrue(check.page().select(".flags").text().contains("also trained"), check.text());
        check.send("pin", SampleSite.pin());
        assertEquals(1, flags("trained-by-assessor"));
    }

    @Test
    void bothClocksAreKept() {
        Reply signed = form().send(SampleDemonstration.within("entered-at", "2026-03-05T06:15:30.123Z"))
                .send("pin", SampleSite.pin(), "signed-at", "2026-03-05T07:45:00Z");
        assertTrue(signed.text().contains("Filled in, by the clock of the device 5 Mar 2026, 06:15"), signed.text());
        assertTrue(signed.text().contains("Signed, by the clock of the device 5 Mar 2026, 07:45"));
        assertTrue(signed.text().contains("Received and stored 5 Mar 2026, 08:00"));
    }

    @Test
    void aClockThatSaysNonsenseIsNotBelieved() {
        Reply signed = form().send(SampleDemonstration.within("entered-at", "yesterday"))
                .send("pin", SampleSite.pin());
        assertEquals(200, signed.status());
        assertFalse(signed.text().contains("Filled in, by"));
    }

    @Test
    void theDatabaseRefusesANotPassedOfOneself() {
        long self = site.personId(SampleSite.SUPERVISOR);
        String entry =
                "INSERT INTO recordbook_entry SELECT seq + 1, 1, 'signoff.not-passed', 'x', " + self + ", " + self
                        + ", 0, recorded_at_ms, '{}', hash, randomblob(32) FROM recordbook_entry ORDER BY seq DESC LIMIT 1";
        CompletionException refused = assertThrows(
                CompletionException.class,
                () -> site.database().write(handle -> handle.execute(entry)).join());
        assertTrue(String.valueOf(refused.getCause()).contains("nobody signs off themselves"));
    }

    private static Reply form() {
        return site.signIn(SampleSite.SUPERVISOR)
                .get("/sign-off/" + site.personId(SampleSite.NEW_HIRE) + SampleDemonstration.RIG);
    }

    private static String evidence() {
        return site.signIn(SampleSite.SUPERVISOR)
                .get("/board/" + site.personId(SampleSite.NEW_HIRE) + "/demonstration-narrow-belt-rig")
                .text();
    }

    private static long flags(String flag) {
        return number("SELECT count(*) FROM signoff_flag WHERE flag = '" + flag + "' AND seq = " + last());
    }

    private static long count(String table) {
        return number("SELECT count(*) FROM " + table);
    }

    private static long last() {
        return number(
                "SELECT max(seq) FROM recordbook_entry WHERE kind IN ('signoff.demonstration', 'signoff.not-passed')");
    }

    private static long number(String sql) {
        return site.database()
                .read(handle -> handle.createQuery(sql).mapTo(Long.class).one());
    }

    private static String text(String sql) {
        return site.database()
                .read(handle -> handle.createQuery(sql).mapTo(String.class).one());
    }
}
