package beltmark.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import beltmark.lockout.QuizTaker;
import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ReviewJourneyTest {

    @SuppressWarnings("NullAway.Init")
    private SampleSite site;

    @BeforeEach
    void start() {
        site = SampleSite.start();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void tellsWhoPassedAndHowLongAgo() {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of());
        site.clock().move(Duration.ofDays(41));
        QuizTaker.sitAll(site.signIn(SampleSite.OTHER_NEW_HIRE), Set.of("stop-button"));

        Reply review = review();

        assertTrue(row(review, "people", SampleSite.NEW_HIRE).contains("passed 5 Mar 2026 41 days"));
        assertTrue(row(review, "people", SampleSite.OTHER_NEW_HIRE).contains("not passed"));
        assertTrue(row(review, "people", SampleSite.SUPERVISOR).contains("not taken"));
        assertTrue(review.text().contains("1 of 14 people have passed the lockout quiz."));
    }

    @Test
    void namesCriticalMissesByPerson() {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("stop-button", "shift-change"));

        String row = row(review(), "critical", SampleSite.NEW_HIRE);

        assertTrue(row.contains("A padlock on the stop button 1 5 Mar 2026"), row);
        assertFalse(row.contains("Shift change"));
    }

    @Test
    void countsMissesAndNamesTheMostFrequentOne() {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("shift-change"));
        QuizTaker.sitAll(site.signIn(SampleSite.OTHER_NEW_HIRE), Set.of());

        String row = row(review(), "questions", "Shift change");

        assertTrue(row.contains("1 of 2 fewer than 10"), row);
        assertTrue(row.contains("“Those leaving take theirs off"), row);
        assertTrue(row.endsWith("chosen, once"), row);
    }

    @Test
    void givesAnIntervalFromTenSittingsOn() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        for (int sitting = 0; sitting < 10; sitting++) {
            QuizTaker.sitAll(browser, sitting < 4 ? Set.of("shift-change") : Set.of());
        }

        // 4 of 10: .1682 to .6873 by the formula of Wilson 1927
        assertTrue(row(review(), "questions", "Shift change").contains("4 of 10 17 to 69 %"));
        assertTrue(row(review(), "questions", "Minor servicing").contains("0 of 10 0 to 28 %"));
    }

    @Test
    void asksOneCrewAtATime() {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("stop-button"));
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);

        String pier = coordinator
                .get("/review?crew=" + site.crewId(SampleSite.NEW_HIRE))
                .text();
        String silo = coordinator
                .get("/review?crew=" + site.crewId(SampleSite.OTHER_SUPERVISOR))
                .text();

        assertTrue(pier.contains(SampleSite.NEW_HIRE));
        assertFalse(silo.contains(SampleSite.NEW_HIRE));
        assertTrue(silo.contains("No sitting is finished yet."));
        assertEquals(200, coordinator.get("/review?crew=0").status());
        for (String none : List.of("abc", "999", "x%27;--")) {
            assertEquals(404, coordinator.get("/review?crew=" + none).status());
            assertEquals(
                    404, coordinator.get("/review/lockout.csv?crew=" + none).status());
        }
    }

    @Test
    void showsEachAnswerWithItsRecord() {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("stop-button"));
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);

        String address = coordinator
                .get("/review")
                .page()
                .select("a[href^=/review/sittings/]")
                .attr("href");
        Reply sitting = coordinator.get(address);

        assertEquals(20, sitting.page().select(".kept > li").size());
        Element missed = sitting.page().select(".kept > li:has(.status-wrong)").first();
        assertTrue(missed != null && missed.text().contains("Key None; no energy is isolated yet"));
        assertTrue(missed.select(".kept-record").text().matches("Record \\d+"));
        assertEquals(404, coordinator.get("/review/sittings/999999").status());
    }

    @Test
    void isForTheCoordinatorOnly() {
        Browser newHire = site.signIn(SampleSite.NEW_HIRE);

        assertEquals(403, newHire.get("/review").status());
        assertEquals(403, newHire.get("/review/lockout.csv").status());
        assertEquals(403, newHire.get("/review/sittings/1").status());
    }

    @Test
    void exportsAFileThatNoSpreadsheetRuns() throws IOException {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("stop-button", "group-lockbox"));
        String hostile = "=HYPERLINK(\"x\"),\r\n\"Ümit\" @Ö";
        site.database()
                .write(handle -> handle.createUpdate("UPDATE people_person SET name = :name WHERE name = :old")
                        .bind("name", hostile)
                        .bind("old", SampleSite.NEW_HIRE)
                        .execute())
                .join();

        Reply file = site.signIn(SampleSite.COORDINATOR).get("/review/lockout.csv");
        List<CSVRecord> records = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(file.body()))
                .getRecords();

        assertTrue(file.header("Content-Disposition").startsWith("attachment;"));
        assertTrue(file.header("Content-Type").startsWith("text/csv; charset=utf-8"));
        assertEquals(1, records.size());
        assertEquals("'" + hostile, records.get(0).get("Person"));
        assertEquals("2026-03-05T08:00:00Z", records.get(0).get("Finished (UTC)"));
        assertEquals("18", records.get(0).get("Right"));
        assertEquals("no", records.get(0).get("Passed"));
        assertEquals(
                "A padlock on the stop button; Your own lock in a group",
                records.get(0).get("Critical questions missed"));
    }

    private Reply review() {
        return site.signIn(SampleSite.COORDINATOR).get("/review");
    }

    private static String row(Reply review, String table, String name) {
        return review.page().select("table[aria-labelledby=" + table + "] tr").stream()
                .map(Element::text)
                .filter(text -> text.startsWith(name))
                .findFirst()
                .orElseThrow();
    }
}
