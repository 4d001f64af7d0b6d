package beltmark.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import beltmark.core.lockout.QuestionKind;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LockoutJourneyTest {

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
    void passesAndIsToldWhatThatMeans() {
        Reply result = QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of());

        assertTrue(result.text().contains("Quiz passed"));
        assertTrue(result.text().contains("20 of 20 questions right, 16 needed."));
        assertTrue(result.text().contains("it clears nobody for a job"));
        assertFalse(result.page().select("aside.caution").isEmpty());
        assertEquals(1, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'lockout.result'"));
    }

    @Test
    void failsByOneCriticalMissWhateverTheScore() {
        Reply result = QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("stop-button"));

        assertTrue(result.text().contains("Quiz not passed"));
        assertTrue(result.text().contains("19 of 20 questions right, 16 needed."));
        assertTrue(result.text().contains("Critical questions missed: A padlock on the stop button"));
    }

    @Test
    void eachAnswerIsExplainedWithItsParagraph() {
        Reply feedback = QuizTaker.answer(QuizTaker.open(site.signIn(SampleSite.NEW_HIRE)), false);

        assertEquals(200, feedback.status());
        assertTrue(feedback.page().select(".status-wrong").hasText());
        assertTrue(feedback.page().select(".source dd").get(1).text().matches("29 CFR 19.*|OSHA letter.*"));
        assertTrue(feedback.page().select(".is-right, .is-missed").hasText());
    }

    @Test
    void theSameFormSentTwiceMakesOneRecord() {
        Reply question = QuizTaker.open(site.signIn(SampleSite.NEW_HIRE));

        Reply first = QuizTaker.answer(question, true);
        Reply second = QuizTaker.answer(question, false);

        assertEquals(200, second.status());
        assertEquals(first.body(), second.body());
        assertEquals(1, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'lockout.answer'"));
    }

    @Test
    void aSecondTabCannotChangeTheAnswer() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply question = QuizTaker.open(browser);
        Reply otherTab = browser.get(question.path());
        QuizTaker.answer(question, true);

        Reply refused = QuizTaker.answer(otherTab, false);

        assertEquals(409, refused.status());
        assertTrue(refused.text().contains("The first answer stands"));
        assertTrue(refused.page().select(".status-right").hasText());
        assertEquals(1, count("SELECT count(*) FROM lockout_answer WHERE judgement = 'right'"));
    }

    @Test
    void goingBackShowsTheAnswerAndNoForm() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply question = QuizTaker.open(browser);
        QuizTaker.answer(question, true);

        assertFalse(QuizTaker.isQuestion(browser.get(question.path())));
    }

    @Test
    void laterQuestionsCannotBeSeenBeforeTheirTurn() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply first = QuizTaker.open(browser);

        assertEquals(
                first.path(), browser.get(first.path().replaceFirst("1$", "5")).path());
        assertEquals(404, browser.get(first.path().replaceFirst("1$", "21")).status());
        assertEquals(404, browser.get(first.path().replaceFirst("1$", "0")).status());
    }

    @Test
    void goesOnWhereOneLeftOff() {
        Browser phone = site.signIn(SampleSite.NEW_HIRE);
        Reply second = phone.get(next(QuizTaker.answer(QuizTaker.open(phone), true)));
        QuizTaker.answer(second, true);

        Browser tablet = site.signIn(SampleSite.NEW_HIRE);

        assertTrue(tablet.get("/lockout").text().contains("Go on at question 3 of 20"));
        assertTrue(QuizTaker.open(tablet).path().endsWith("/3"));
    }

    @Test
    void somebodyElsesSittingDoesNotExist() {
        Reply question = QuizTaker.open(site.signIn(SampleSite.NEW_HIRE));
        Browser other = site.signIn(SampleSite.OTHER_NEW_HIRE);
        Reply own = QuizTaker.open(other);

        assertEquals(404, other.get(question.path()).status());
        assertEquals(404, other.get(question.path().replaceFirst("/1$", "")).status());
        String csrf = own.page().select("[name=csrf]").attr("value");
        String operation = own.page().select("[name=operation]").attr("value");
        Reply answer = other.post(question.path(), Map.of("csrf", csrf, "operation", operation, "choice", "1"));
        assertEquals(404, answer.status());
        assertEquals(0, count("SELECT count(*) FROM lockout_answer"));
    }

    @Test
    void anOrderKeepsWhatWasChosenUntilItIsWhole() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply order = firstOrder(browser);

        Reply twice = order.send("place-1", "2", "place-2", "2", "place-3", "1");
        assertEquals(422, twice.status());
        assertTrue(twice.text().contains("Two lines have the same place."));
        assertEquals("2", twice.page().select("#place-2 option[selected]").attr("value"));

        Reply missing = order.send("place-1", "2", "place-2", "", "place-3", "1");
        assertTrue(missing.text().contains("A line has no place yet."));
        assertEquals("1", missing.page().select("#place-3 option[selected]").attr("value"));
    }

    @Test
    void oddAnswersAreNotKept() {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        Reply question = QuizTaker.open(browser);
        String field = QuizTaker.question(question).kind() == QuestionKind.PUT_IN_ORDER ? "place-1" : "choice";

        for (String odd : new String[] {"", "0", "99", "-1", "a", "9".repeat(1000), "<b>"}) {
            Reply refused = question.send(field, odd);
            assertEquals(422, refused.status(), odd);
            assertTrue(refused.page().select(".error").hasText(), odd);
        }
        assertEquals(0, count("SELECT count(*) FROM lockout_answer"));
    }

    private static Reply firstOrder(Browser browser) {
        Reply page = QuizTaker.open(browser);
        while (QuizTaker.question(page).kind() != QuestionKind.PUT_IN_ORDER) {
            page = browser.get(next(QuizTaker.answer(page, true)));
        }
        return page;
    }

    private static String next(Reply feedback) {
        return feedback.page().select("main a.button").attr("href");
    }

    private long count(String query) {
        return site.database()
                .read(handle -> handle.createQuery(query).mapTo(Long.class).one());
    }
}
