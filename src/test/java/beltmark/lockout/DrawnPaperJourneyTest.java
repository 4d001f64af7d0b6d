package beltmark.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Papers drawn from the bank, sat over HTTP, so without any script. */
class DrawnPaperJourneyTest {

    private static final int MOST_SITTINGS = 12;

    @SuppressWarnings("NullAway.Init")
    private SampleSite site;

    @BeforeEach
    void start() {
        site = SampleSite.startWithBank();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private static Stream<String> languages() {
        return Texts.load(ZoneOffset.UTC).languages().stream().map(language -> language.tag());
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyKindOfQuestionCanBeAnsweredWithoutScripts(String language) {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        browser.get("/settings").send("language", language);
        Set<QuestionKind> left = EnumSet.allOf(QuestionKind.class);
        for (int sitting = 0; sitting < MOST_SITTINGS && !left.isEmpty(); sitting++) {
            Reply page = QuizTaker.open(browser);
            while (QuizTaker.isQuestion(page)) {
                Question question = QuizTaker.question(page);
                left.remove(question.kind());
                Reply feedback = QuizTaker.answer(page, true);
                assertFalse(feedback.page().select(".status-right").isEmpty(), question.id());
                page = browser.get(feedback.page().select("main a.button").attr("href"));
            }
        }

        assertEquals(Set.of(), left);
        assertEquals(
                0, count("SELECT count(*) FROM lockout_result WHERE passed = 0"), "every answer was the right one");
    }

    @Test
    void aPaperIsDrawnWithFiveCriticalQuestions() {
        sit("lockout");

        assertEquals(30, count("SELECT asked FROM lockout_result"));
        assertEquals(
                30, count("SELECT length(questions) - length(replace(questions, ' ', '')) + 1 FROM lockout_drawn"));
        assertEquals(1, count("SELECT passed FROM lockout_result"));
    }

    @Test
    void aPassAsAffectedIsNoPassAsAuthorized() {
        Reply result = sit("lockout-affected");

        assertTrue(result.text().contains("15 of 15"), result::text);
        assertEquals(1, count("SELECT count(*) FROM lockout_result WHERE quiz = 'lockout-affected' AND passed = 1"));
        assertEquals(0, count("SELECT count(*) FROM lockout_result WHERE quiz = 'lockout'"));
        String board = site.signIn(SampleSite.SUPERVISOR)
                .get("/board/" + site.personId(SampleSite.NEW_HIRE))
                .text();
        assertFalse(board.contains("passed"), board);
    }

    @Test
    void aFinishedPaperCanBeLookedAtAgain() {
        Reply result = sit("lockout");
        String again = result.page().select("ol.results a").get(6).attr("href");

        assertFalse(site.signIn(SampleSite.NEW_HIRE)
                .get(again)
                .page()
                .select(".status-right")
                .isEmpty());
    }

    @Test
    void aMatchKeepsWhatWasChosenUntilItIsWhole() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply page = firstOf(browser, QuestionKind.MATCH);

        Reply refused = page.send("match-1-1", "2");

        assertEquals(422, refused.status());
        assertEquals(
                "2",
                refused.page().select("select[name=match-1-1] option[selected]").attr("value"));
        assertEquals(422, page.send("match-1-1", "99").status());
    }

    @Test
    void everySpotOfADrawingIsTheLabelOfABox() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply page = firstOf(browser, QuestionKind.SPOTS);

        List<String> labels = page.page().select("svg label.spot").eachAttr("for");
        List<String> boxes = page.page().select("input[type=checkbox]").eachAttr("id");

        assertEquals(boxes, labels);
        assertFalse(boxes.isEmpty());
    }

    private static Reply firstOf(Browser browser, QuestionKind kind) {
        Reply page = QuizTaker.open(browser);
        for (int sitting = 0; sitting < MOST_SITTINGS; sitting++) {
            while (QuizTaker.isQuestion(page)) {
                if (QuizTaker.question(page).kind() == kind) {
                    return page;
                }
                page = browser.get(QuizTaker.answer(page, true)
                        .page()
                        .select("main a.button")
                        .attr("href"));
            }
            page = QuizTaker.open(browser);
        }
        throw new AssertionError("no question of kind " + kind);
    }

    private Reply sit(String paper) {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply page = QuizTaker.open(browser, paper);
        while (QuizTaker.isQuestion(page)) {
            page = browser.get(
                    QuizTaker.answer(page, true).page().select("main a.button").attr("href"));
        }
        return page;
    }

    private long count(String query) {
        return site.database()
                .read(handle -> handle.createQuery(query).mapTo(Long.class).one());
    }
}
