package beltmark.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.mastery.KnowledgeTracing;
import beltmark.core.mastery.SkillState;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a person's practice shows, and what the start page makes of it. */
class ProgressJourneyTest {

    private static final String FAMILY = "spring-length";

    private SampleSite site;
    private Browser person;

    @BeforeEach
    void start() {
        site = SampleSite.start();
        person = site.signIn(SampleSite.NEW_HIRE);
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void todayOffersTenMinutesAndSaysWhy() {
        Reply today = person.get("/today");
        assertEquals(
                4,
                today.page()
                        .select("section[aria-labelledby=drill] ol.ways > li")
                        .size());
        assertTrue(today.text().contains("You have not worked this yet"), today::text);
    }

    @Test
    void fiveRightOverTwoDaysAreMastered() {
        for (int i = 0; i < 4; i++) {
            answerRightly("M" + i);
        }
        assertTrue(person.get("/practice").text().contains("4 of 5 right in a row"));
        site.clock().move(Duration.ofDays(1));
        person = site.signIn(SampleSite.NEW_HIRE);
        answerRightly("M9");
        assertTrue(person.get("/practice").text().contains("Mastered. Due again"));
    }

    @Test
    void aSlipMadeTwiceIsTold() {
        answer("N1", blank("N1").slips().get(0).value());
        assertFalse(person.get("/today").text().contains("Slips that have become habits"));
        answer("N2", blank("N2").slips().get(0).value());
        Reply today = person.get("/today");
        assertTrue(today.text().contains("Slips that have become habits"), today::text);
        assertTrue(today.text()
                .contains(Sample.says("problem.slip." + FAMILY + "."
                        + blank("N2").slips().get(0).id())));
    }

    @Test
    void theSupervisorSeesTheHabitOnTheRecord() {
        answer("Q1", blank("Q1").slips().get(0).value());
        answer("Q2", blank("Q2").slips().get(0).value());
        long id = site.database()
                .read(handle -> handle.select("SELECT id FROM people_person WHERE name = ?", SampleSite.NEW_HIRE)
                        .mapTo(Long.class)
                        .one());
        Reply record = site.signIn(SampleSite.SUPERVISOR).get("/board/" + id);
        assertTrue(record.text().contains("Slips that have become habits"), record::text);
    }

    @Test
    void theStateFollowsFromTheAnswersAlone() {
        answerRightly("P1");
        answer("P2", Length.ofSixteenths(70));
        answerRightly("P3");
        LocalDate day = LocalDate.ofInstant(site.clock().instant(), site.clock().getZone());
        KnowledgeTracing tracing = KnowledgeTracing.ofGuess(0.10);
        SkillState expected = SkillState.start(tracing)
                .after(true, day, tracing)
                .after(false, day, tracing)
                .after(true, day, tracing);
        double known = site.database()
                .read(handle -> handle.select("SELECT known FROM mastery_skill WHERE family = ?", FAMILY)
                        .mapTo(Double.class)
                        .one());
        assertEquals(expected.known(), known, 1e-12);
    }

    private void answerRightly(String code) {
        answer(code, blank(code).rightLength());
    }

    private void answer(String code, Length length) {
        person.get("/practice/" + FAMILY + "/" + code)
                .send("both", LengthPrinter.print(length, Graduation.SIXTEENTH_INCH));
    }

    private static LengthBlank blank(String code) {
        Problem problem = Sample.family(FAMILY).problem(new ProblemCode(code));
        return (LengthBlank) problem.parts().get(0).blanks().get(0);
    }
}
