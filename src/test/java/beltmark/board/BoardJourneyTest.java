package beltmark.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import beltmark.SampleWork;
import beltmark.core.qualification.Scope;
import beltmark.qualification.FactBook;
import beltmark.qualification.NewFact;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoardJourneyTest {

    private static final String CARD = "narrow-belt-rig";

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
    void everybodyOfTheCrewIsInTrainingAtFirst() {
        Reply board = site.signIn(SampleSite.SUPERVISOR).get("/board");
        assertEquals(200, board.status());
        assertEquals("none", cell(board, "practice-bench").select(".cell-word").text());
        assertEquals(
                "in training",
                cell(board, "qualification-" + CARD).select(".cell-word").text());
        assertFalse(board.text().contains("Linh Tranh"));
    }

    @Test
    void aNewHireWhoMetEveryNeedIsCleared() {
        meetEveryNeed();
        Reply board = site.signIn(SampleSite.SUPERVISOR).get("/board");
        assertEquals("✓ 3 clean 5 Mar 2026", cell(board, "practice-bench").text());
        assertEquals("✓ passed 5 Mar 2026", cell(board, "quiz-lockout").text());
        assertEquals("✓ signed 5 Mar 2026", cell(board, "demonstration-" + CARD).text());
        assertEquals(
                "✓ cleared until 5 Mar 2027",
                cell(board, "qualification-" + CARD).text());
        assertEquals("… in training", cell(board, "qualification-wide-belt-rig").text());
    }

    @ParameterizedTest
    @CsvSource({"334, ✓ cleared", "335, ! due soon", "365, ! due soon", "366, ✕ lapsed"})
    void theBoardFollowsTheDay(int days, String status) {
        meetEveryNeed();
        site.clock().move(Duration.ofDays(days));
        Reply board = site.signIn(SampleSite.SUPERVISOR).get("/board");
        String text = cell(board, "qualification-" + CARD).text();
        assertTrue(text.startsWith(status), text);
    }

    @Test
    void everyCellOpensItsRecords() {
        meetEveryNeed();
        Browser browser = site.signIn(SampleSite.SUPERVISOR);
        Reply board = browser.get("/board");
        List<String> links = row(board).select("td a").eachAttr("href");
        assertEquals(row(board).select("td").size(), links.size());
        assertEquals(board.page().select("thead tr:last-child th").size() - 1, links.size());
        links.forEach(link -> assertEquals(200, browser.get(link).status(), link));
        for (String column : List.of("practice-bench", "quiz-lockout", "demonstration-" + CARD)) {
            Reply evidence = browser.get(cell(board, column).select("a").attr("href"));
            assertTrue(evidence.text().matches(".*Record \\d+, by .*Hash [0-9a-f]{12}….*"), evidence.text());
        }
    }

    @Test
    void theEvidenceOfADemonstrationShowsItsRecordAndMeasures() {
        Reply signed = SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);
        String number = signed.path().substring(signed.path().lastIndexOf('/') + 1);
        Reply evidence =
                signed.browser().get(signed.page().select("a[href^=/board/]").attr("href"));
        assertTrue(evidence.text().contains("Record " + number + ", by " + SampleSite.SUPERVISOR), evidence.text());
        assertTrue(evidence.text().contains("28 11/16 in wanted 28 11/16 in, typed 28 11/16 in"), evidence.text());
    }

    @Test
    void whatNobodyTypedIsNotToldAsTyped() {
        Reply signed = SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);
        site.database()
                .write(handle -> {
                    handle.execute("DROP TRIGGER signoff_measure_no_update");
                    return handle.execute("UPDATE signoff_measure SET typed = ''");
                })
                .join();
        Reply evidence =
                signed.browser().get(signed.page().select("a[href^=/board/]").attr("href"));
        assertTrue(evidence.text().contains("28 11/16 in wanted 28 11/16 in"), evidence.text());
        assertFalse(evidence.text().contains("typed"), evidence.text());
    }

    @Test
    void theEvidenceOfAQualificationSaysWhyAndWhatNext() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        SampleWork.clean(browser, "bench", "1");
        Reply evidence = browser.get("/board/me/qualification-" + CARD);
        assertTrue(evidence.text().contains("Set-up bench: 1 of 3 worked clean."), evidence.text());
        assertTrue(
                evidence.text().contains("Next: Set-up bench: work it until 3 are clean; 1 so far."), evidence.text());
        assertTrue(evidence.text().contains("site policy"));
    }

    @Test
    void aWrongAnswerIsInTheEvidenceAndNotCountedClean() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply problem = browser.get("/practice/spring-length/7");
        problem.send("both", "4 1/2");
        SampleWork.clean(browser, "spring-length", "7");
        Reply evidence = browser.get("/board/me/practice-spring-length");
        assertTrue(evidence.text().contains("the spring's free length"), evidence.text());
        assertTrue(evidence.text().contains("finished, not clean"), evidence.text());
        assertTrue(evidence.text().contains("0 of 3 clean"), evidence.text());
    }

    @Test
    void aNewHireSeesTheOwnRecordAndNoOther() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply own = browser.get("/board/me");
        assertEquals(200, own.status());
        own.page()
                .select("main a")
                .eachAttr("href")
                .forEach(link -> assertEquals(200, browser.get(link).status(), link));
        assertEquals(403, browser.get("/board").status());
        assertEquals(
                403,
                browser.get("/board/" + site.personId(SampleSite.OTHER_NEW_HIRE))
                        .status());
        assertEquals(
                403,
                browser.get("/board/" + site.personId(SampleSite.NEW_HIRE) + "/practice-bench")
                        .status());
    }

    @Test
    void aSupervisorSeesOnlyTheOwnCrew() {
        Browser browser = site.signIn(SampleSite.OTHER_SUPERVISOR);
        String path = "/board/" + site.personId(SampleSite.NEW_HIRE);
        assertEquals(404, browser.get(path).status());
        assertEquals(404, browser.get(path + "/practice-bench").status());
        Reply board = browser.get("/board?crew=" + site.crewId(SampleSite.NEW_HIRE));
        assertFalse(board.text().contains(SampleSite.NEW_HIRE));
    }

    @ParameterizedTest
    @ValueSource(strings = {SampleSite.COORDINATOR, SampleSite.ADMIN})
    void theOfficeSeesEverybodyAndFiltersByCrew(String name) {
        Browser browser = site.signIn(name);
        Reply all = browser.get("/board");
        assertTrue(all.text().contains(SampleSite.NEW_HIRE));
        assertTrue(all.text().contains("Linh Tranh"));
        Reply one = browser.get("/board?crew=" + site.crewId(SampleSite.NEW_HIRE));
        assertTrue(one.text().contains(SampleSite.NEW_HIRE));
        assertFalse(one.page().select("table").text().contains("Linh Tranh"));
        assertEquals(404, browser.get("/board?crew=999").status());
        assertEquals(404, browser.get("/board?crew=x").status());
    }

    @Test
    void aTrainerHasNoBoard() {
        assertEquals(403, site.signIn(SampleSite.TRAINER).get("/board").status());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/board/99999", "/board/x", "/board/me/juggling", "/board/me/practice-juggling"})
    void whatDoesNotExistIsNotFound(String path) {
        assertEquals(404, site.signIn(SampleSite.SUPERVISOR).get(path).status());
    }

    @Test
    void anyDayCanBeAskedForAsKnownThenOrByNow() {
        meetEveryNeed();
        site.clock().move(Duration.ofDays(10));
        Browser supervisor = site.signIn(SampleSite.SUPERVISOR);
        String column = "qualification-" + CARD;
        assertEquals(
                "… in training",
                cell(supervisor.get("/board?on=2026-03-04"), column).text());
        assertEquals(
                "✓ cleared until 5 Mar 2027",
                cell(supervisor.get("/board?on=2026-03-05"), column).text());
        assertEquals(
                "✕ lapsed ended 5 Mar 2027",
                cell(supervisor.get("/board?on=2027-03-06"), column).text());
        withdrawQuiz();
        assertEquals(
                "✓ cleared until 5 Mar 2027",
                cell(supervisor.get("/board?on=2026-03-05"), column).text(),
                "as known then");
        assertEquals(
                "… in training",
                cell(supervisor.get("/board?on=2026-03-05&known=now"), column).text(),
                "with what was told later");
        assertEquals("… in training", cell(supervisor.get("/board"), column).text());
    }

    @Test
    void theEvidenceOfADayLeavesOutWhatCameLater() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        SampleWork.clean(browser, "bench", "1");
        site.clock().move(Duration.ofDays(1));
        browser = site.signIn(SampleSite.NEW_HIRE);
        SampleWork.clean(browser, "bench", "2");
        Reply then = browser.get("/board/me/practice-bench?on=2026-03-05");
        assertEquals(1, then.page().select(".thing").size());
        assertTrue(then.text().contains("As of 5 Mar 2026."), then.text());
        assertEquals(
                2,
                browser.get("/board/me/practice-bench").page().select(".thing").size());
    }

    @Test
    void theBoardIsFilteredByHardwareAndStatus() {
        meetEveryNeed();
        Browser supervisor = site.signIn(SampleSite.SUPERVISOR);
        Reply narrow = supervisor.get("/board?card=" + CARD);
        assertFalse(narrow.page().select("thead").text().contains("Wide-belt rig"));
        Reply cleared = supervisor.get("/board?status=cleared");
        assertEquals(1, cleared.page().select("tbody tr:has(td)").size());
        assertEquals(404, supervisor.get("/board?card=moon-rig").status());
        assertEquals(200, supervisor.get("/board?status=moon&on=never&page=99").status());
    }

    @Test
    void theFileHasARowForEachPersonAndQualification() {
        Reply file = site.signIn(SampleSite.SUPERVISOR).get("/board.csv?card=" + CARD);
        // four people of the crew with two qualifications each, and the names of the columns
        assertEquals(9, file.body().lines().count(), file::body);
        assertTrue(file.body().contains("Mateo Quispe,Pier crew,Narrow-belt rig,in training,"), file::body);
    }

    /** A correction, as a feature records it. */
    private void withdrawQuiz() {
        long person = site.personId(SampleSite.NEW_HIRE);
        site.database()
                .write(handle -> {
                    long result = handle.createQuery("SELECT seq FROM lockout_result")
                            .mapTo(Long.class)
                            .one();
                    long correction = append(handle, person, "lockout.correction", new Opened("lockout"));
                    LocalDate today = LocalDate.ofInstant(site.clock().instant(), ZoneOffset.UTC);
                    new FactBook().add(handle, correction, NewFact.withdrawal(Scope.person(person), result, today));
                    return correction;
                })
                .join();
    }

    private void meetEveryNeed() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        for (String family : List.of("bench", "mount-marks", "orientation", "spring-length")) {
            for (int code = 1; code <= 3; code++) {
                SampleWork.clean(browser, family, Integer.toString(code));
            }
        }
        passQuiz(site.personId(SampleSite.NEW_HIRE));
        SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);
    }

    /** One question, answered right: as the quiz feature records it. */
    private void passQuiz(long person) {
        site.database()
                .write(handle -> {
                    long sitting = append(handle, person, "lockout.sitting", new Opened("lockout"));
                    handle.execute(
                            "INSERT INTO lockout_sitting VALUES (?, ?, 'lockout', 1, 1, ?)", sitting, person, now());
                    Answered body = new Answered(
                            "Which?", List.of(new Option("a", "This"), new Option("b", "That")), List.of("a"));
                    long answer = append(handle, person, "lockout.answer", body);
                    handle.execute(
                            "INSERT INTO lockout_answer VALUES (?, ?, 'which', 'a', 'right', ?)",
                            answer,
                            sitting,
                            now());
                    long result = append(handle, person, "lockout.result", new Opened("lockout"));
                    LocalDate today = LocalDate.ofInstant(site.clock().instant(), ZoneOffset.UTC);
                    new FactBook().add(handle, result, NewFact.quizPassed(person, "lockout", today));
                    return handle.execute(
                            "INSERT INTO lockout_result VALUES (?, ?, ?, 1, 'lockout', 1, 1, 1, 1, '', 1, ?)",
                            result,
                            sitting,
                            person,
                            now());
                })
                .join();
    }

    private long append(Handle handle, long person, String kind, Record body) {
        Entry entry =
                new Entry(kind, kind + person, person, person, site.clock().instant(), body);
        return new RecordBook(site.clock()).append(handle, entry).sequence();
    }

    private long now() {
        return site.clock().millis();
    }

    private record Opened(String quiz) {}

    private record Option(String id, String text) {}

    private record Answered(String ask, List<Option> options, List<String> chosen) {}

    private Element row(Reply board) {
        return board.page().select("tr:contains(" + SampleSite.NEW_HIRE + ")").get(0);
    }

    private Element cell(Reply board, String column) {
        return row(board).select("td:has(a[href*=/" + column + "])").get(0);
    }
}
