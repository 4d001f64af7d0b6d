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

        String row = row(review(), "questions", "1 Shift change");

        assertTrue(row.contains("1 of 2 fewer than 10"), row);
        assertTrue(row.contains("“Those leaving take theirs off"), row);
        assertTrue(row.contains("arrive” chosen, once"), row);
    }

    @Test
    void givesAnIntervalFromTenPeopleOn() {
        List<String> people = everybody().subList(0, 10);
        for (int person = 0; person < 10; person++) {
            QuizTaker.sitAll(site.signIn(people.get(person)), person < 4 ? Set.of("shift-change") : Set.of());
        }

        // 6 of 10: .3127 to .8318, 10 of 10: .7225 to 1 by the formula of Wilson 1927
        assertTrue(row(review(), "questions", "1 Shift change").contains("6 of 10 31 to 83 %"));
        assertTrue(row(review(), "questions", "20 ").contains("10 of 10 72 to 100 %"));
    }

    @Test
    void countsEachPersonOnce() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        QuizTaker.sitAll(browser, Set.of("shift-change"));
        QuizTaker.sitAll(browser, Set.of());

        assertTrue(row(review(), "questions", "1 Shift change").contains("0 of 1"));
        assertTrue(review().page().select(".facts").text().contains("Passed at the first attempt 1 of 1"));
    }

    @Test
    void choosesMonths() {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of());
        site.clock().move(Duration.ofDays(60));
        QuizTaker.sitAll(site.signIn(SampleSite.OTHER_NEW_HIRE), Set.of());
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);

        assertTrue(coordinator.get("/review?from=2026-04").text().contains("1 of 1, fewer than 10"));
        assertTrue(coordinator.get("/review?from=2026-03&to=2026-05").text().contains("2 of 2, fewer than 10"));
        assertTrue(coordinator.get("/review?to=2026-02").text().contains("Nobody sat the quiz for the first time"));
        assertEquals(
                "2026-03",
                coordinator
                        .get("/review?from=2026-03")
                        .page()
                        .select("#from option[selected]")
                        .val());
        for (String none : List.of("2026-13", "March", "2026-3", "%27")) {
            assertEquals(404, coordinator.get("/review?from=" + none).status());
        }
    }

    /** 12 people of two crews: the ten of one could be told, if the two of the other did not follow from the whole. */
    @Test
    void holdsBackACrewWhoseComplementIsSmall() {
        long crew = site.crewId(SampleSite.NEW_HIRE);
        moveTo(crew, everybody());
        everybody().subList(0, 10).forEach(name -> QuizTaker.sitAll(site.signIn(name), Set.of("shift-change")));
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);
        assertTrue(coordinator.get("/review?crew=" + crew).text().contains("0 of 10 0 to 28 %"));

        moveTo(otherCrew(crew), everybody().subList(10, 12));
        everybody().subList(10, 12).forEach(name -> QuizTaker.sitAll(site.signIn(name), Set.of()));

        String held = coordinator.get("/review?crew=" + crew).text();
        assertTrue(held.contains("0 of 10 not told, so that a small crew cannot be worked out"), held);
        assertTrue(coordinator.get("/review").text().contains("2 of 12 5 to 45 %"));
    }

    private long otherCrew(long crew) {
        return site.database()
                .read(handle -> handle.createQuery("SELECT min(id) FROM people_crew WHERE id <> :crew")
                        .bind("crew", crew)
                        .mapTo(Long.class)
                        .one());
    }

    private void moveTo(long crew, List<String> names) {
        names.forEach(name -> site.database()
                .write(handle -> handle.createUpdate("UPDATE people_person SET crew_id = :crew WHERE name = :name")
                        .bind("crew", crew)
                        .bind("name", name)
                        .execute())
                .join());
    }

    private List<String> everybody() {
        return site.database()
                .read(handle -> handle.createQuery("SELECT name FROM people_person WHERE active = 1 ORDER BY name")
                        .mapTo(String.class)
                        .list());
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
        assertTrue(silo.contains("Nobody sat the quiz for the first time"));
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
