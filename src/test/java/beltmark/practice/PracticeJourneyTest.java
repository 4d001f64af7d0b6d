package beltmark.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.Answer;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.solution.Slip;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Works problems over real HTTP; each test has a problem code of its own, so that none meets another's attempts. */
class PracticeJourneyTest {

    private static SampleSite site;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void aWholeSetUpIsWorkedAndCountedAsClean() {
        Reply page = workAll(site.signIn(SampleSite.NEW_HIRE), problem("bench", "A1"), Graduation.SIXTEENTH_INCH);
        assertTrue(page.text().contains("Every part right at the first answer"));
        assertEquals(5, answers("A1"));
        assertEquals(1, cleanAttempts("A1"));
    }

    @Test
    void aWholeSetUpIsWorkedInMillimetresToo() {
        Reply page = workAll(site.signIn(SampleSite.OTHER_NEW_HIRE), problem("bench", "A2"), Graduation.MILLIMETRE);
        assertTrue(page.text().contains("Every part right at the first answer"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mount-marks", "orientation", "spring-length"})
    void aDrillEndsWithItsOnePartAndLeadsToTheNext(String family) {
        Reply page = workAll(site.signIn(SampleSite.NEW_HIRE), problem(family, "A3"), Graduation.SIXTEENTH_INCH);
        assertFalse(page.page().select("a[href=/practice/" + family + "]").isEmpty());
        assertFalse(page.page().select("ol.steps li").isEmpty());
    }

    @Test
    void aSlipIsNamedAndCanBeCorrected() {
        Problem problem = problem("mount-marks", "A4");
        Slip slip = left(problem).slips().get(0);
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem)
                .send("left", print(slip.value()), "right", right(problem, 1));
        assertTrue(page.text().contains(Sample.says("problem.slip.mount-mark." + slip.id())), page::text);
        Reply corrected = page.send("left", right(problem, 0));
        assertTrue(corrected.text().contains("All parts are done"), corrected::text);
        assertEquals(0, cleanAttempts("A4"));
    }

    @Test
    void anOwnFigureCarriesIntoTheNextPart() {
        Problem problem = problem("bench", "A5");
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem)
                .send("left", right(problem, 0), "right", right(problem, 1))
                .send("way", other(problem));
        page = page.sendTo(path(problem) + "/orientation/leave", "how", "own-figure");
        Length offset = Sample.situation(problem)
                .card()
                .mountOffset(
                        Sample.situation(problem).tip(),
                        Sample.situation(problem)
                                .orientation()
                                .chosen()
                                .orElseThrow()
                                .turnedOver());
        page = page.send(
                "left", print(Sample.situation(problem).beltMarks().left().plus(offset)),
                "right", print(Sample.situation(problem).beltMarks().right().plus(offset)));
        assertTrue(page.text().contains("Right as a carried figure"), page::text);
    }

    @Test
    void workedStepsOfAnOwnFigureWaitUntilTheEnd() {
        Problem problem = problem("bench", "A6");
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem)
                .send("left", right(problem, 0), "right", right(problem, 1))
                .send("way", other(problem))
                .sendTo(path(problem) + "/orientation/leave", "how", "own-figure");
        assertTrue(page.page().select("section:has(#done-orientation) ol.steps").isEmpty());
    }

    @Test
    void askingForTheWorkedStepsClosesThePart() {
        Problem problem = problem("spring-length", "A7");
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem)
                .send("both", "5 1/4")
                .sendTo(path(problem) + "/spring-length/leave", "how", "steps-shown");
        assertTrue(page.text().contains("Right answer: " + right(problem, 0)), page::text);
        assertEquals(0, cleanAttempts("A7"));
    }

    @ParameterizedTest
    @CsvSource({
        "'', Enter a length",
        "abc, That is not a length",
        "1/0, cannot have 0 below the line",
        "4 17/16, Enter the whole inches first",
        "-4, Leave out the minus sign",
        "5 mm, which cannot be right for this measure",
        "127.5, If you meant the other unit",
        "'1,250', The comma",
        "12 furlongs, That unit is not known here"
    })
    void whatCannotBeReadIsAskedAgainAndNotStored(String typed, String sentence) {
        Problem problem = problem("spring-length", "A8");
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem).send("both", typed);
        assertEquals(422, page.status());
        assertTrue(page.text().contains(sentence), page::text);
        assertEquals(typed, field(page, "both").val());
        assertEquals(0, answers("A8"));
    }

    @Test
    void aVeryLongAnswerIsAskedAgain() {
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem("spring-length", "A9"))
                .send("both", "4".repeat(10_000));
        assertEquals(422, page.status());
        assertTrue(page.text().contains("That is more than any length needs"));
    }

    @Test
    void whatCouldBeReadBesideSomethingUnreadableIsKept() {
        Problem problem = problem("mount-marks", "B1");
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem).send("left", "28 3/4", "right", "abc");
        assertEquals("28 3/4", field(page, "left").val());
        assertEquals("abc", field(page, "right").val());
    }

    @Test
    void howALengthWasReadIsShown() {
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem("spring-length", "B2"))
                .send("both", "5-1/4");
        assertTrue(page.text().contains("Read as 5 1/4 in (133.35 mm)"), page::text);
    }

    @Test
    void sendingAFormTwiceMakesOneRecord() {
        Problem problem = problem("mount-marks", "B3");
        Reply form = open(site.signIn(SampleSite.NEW_HIRE), problem);
        form.send("left", "28", "right", "29");
        Reply again = form.send("left", "28", "right", "29");
        assertEquals(200, again.status());
        assertEquals(1, answers("B3"));
    }

    @Test
    void aStaleFormOfASecondTabRecordsNothingNew() {
        Problem problem = problem("spring-length", "B4");
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply stale = open(browser, problem);
        open(browser, problem).send("both", right(problem, 0));
        Reply reply = stale.send("both", "5 1/4");
        assertEquals(409, reply.status());
        assertTrue(reply.text().contains("Nothing new was recorded"));
        assertEquals(1, answers("B4"));
    }

    @Test
    void theSameCodeIsANewAttemptForSomebodyElse() {
        Problem problem = problem("spring-length", "B5");
        workAll(site.signIn(SampleSite.NEW_HIRE), problem, Graduation.SIXTEENTH_INCH);
        Reply page = open(site.signIn(SampleSite.OTHER_NEW_HIRE), problem);
        assertFalse(page.page().select("input[name=both]").isEmpty());
    }

    @Test
    void nothingOnThePageTellsTheAnswerBeforeItIsGiven() {
        Problem problem = problem("mount-marks", "B6");
        Reply page = open(site.signIn(SampleSite.NEW_HIRE), problem);
        for (int i = 0; i < 2; i++) {
            assertFalse(page.body()
                    .contains(LengthPrinter.number(blank(problem, i).rightLength(), Graduation.SIXTEENTH_INCH)));
            assertFalse(page.body()
                    .contains(Long.toString(blank(problem, i).rightLength().nanometres())));
        }
        assertEquals("no-store", page.header("Cache-Control"));
        assertEquals("", page.header("ETag"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/practice/no-such-family", "/practice/bench/%3F%3F", "/practice/bench/1234567890123"})
    void anAddressWithoutAProblemIsNotFound(String path) {
        assertEquals(404, site.signIn(SampleSite.NEW_HIRE).get(path).status());
    }

    @Test
    void aMistypedCodeIsSaidToBeNone() {
        Reply page = site.signIn(SampleSite.NEW_HIRE).get("/practice/bench?code=7K3%3F");
        assertEquals(422, page.status());
        assertTrue(page.text().contains("That is no problem code"));
        assertEquals("7K3?", field(page, "code").val());
        assertEquals("code", page.page().select("[autofocus]").attr("name"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/practice/bench?code=7k3-m1q", "/practice/bench/7k3m1q"})
    void aTypedCodeLeadsToItsProblem(String typed) {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        assertEquals(303, browser.ask("GET", typed, List.of()).status());
        assertEquals("/practice/bench/7K3M1Q", browser.get(typed).path());
    }

    @Test
    void aDeadSessionStoresNothingAndKeepsWhatWasTyped() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply form = open(browser, problem("mount-marks", "B7"));
        browser.cookies().clear();
        Reply reply = form.send("left", "28 3/4", "right", "29");
        assertEquals(401, reply.status());
        assertTrue(reply.text().contains("28 3/4"), reply::text);
        assertEquals(0, answers("B7"));
    }

    private static Problem problem(String family, String code) {
        return Sample.family(family).problem(new ProblemCode(code));
    }

    private static String path(Problem problem) {
        return "/practice/" + problem.family() + "/" + problem.code().text();
    }

    private static Reply open(Browser browser, Problem problem) {
        return browser.get(path(problem));
    }

    private static Reply workAll(Browser browser, Problem problem, Graduation graduation) {
        Reply page = open(browser, problem);
        for (Part part : problem.parts()) {
            String[] answers = part.blanks().stream()
                    .flatMap(blank -> List.of(blank.id(), told(blank.right(), graduation)).stream())
                    .toArray(String[]::new);
            page = page.send(answers);
        }
        return page;
    }

    private static String told(Answer answer, Graduation graduation) {
        return answer instanceof Answer.OfLength length
                ? LengthPrinter.print(length.length(), graduation)
                : ((Answer.OfChoice) answer).option();
    }

    private static LengthBlank blank(Problem problem, int index) {
        return (LengthBlank) problem.parts().get(0).blanks().get(index);
    }

    private static LengthBlank left(Problem problem) {
        return blank(problem, 0);
    }

    private static String right(Problem problem, int index) {
        return print(blank(problem, index).rightLength());
    }

    private static String print(Length length) {
        return LengthPrinter.print(length, Graduation.SIXTEENTH_INCH);
    }

    private static String other(Problem problem) {
        return Sample.situation(problem)
                .orientation()
                .chosen()
                .orElseThrow()
                .turnedOver()
                .id();
    }

    private static Element field(Reply page, String name) {
        return page.page().select("input[name=" + name + "]").get(0);
    }

    private static int answers(String code) {
        return count("SELECT count(*) FROM practice_answer a JOIN practice_attempt t ON t.id = a.attempt_id", code);
    }

    private static int cleanAttempts(String code) {
        return count("SELECT coalesce(sum(clean), 0) FROM practice_attempt t", code);
    }

    private static int count(String select, String code) {
        return site.database()
                .read(handle -> handle.createQuery(select + " WHERE t.code = :code")
                        .bind("code", code)
                        .mapTo(Integer.class)
                        .one());
    }
}
