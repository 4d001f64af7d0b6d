package beltmark.bank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import beltmark.lockout.QuizTaker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BankJourneyTest {

    private static final String FROM_MEMORY = "/lockout/bank/setting-a-cleaner";
    private static final String READ = "/lockout/bank/stop-button";

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

    @Test
    void showsAQuestionWithItsKeyInEveryLanguage() {
        Reply page = site.signIn(SampleSite.TRAINER).get(READ);

        assertTrue(page.text().contains("29 CFR 1910.147(b)"), page::text);
        assertTrue(page.text().contains("paragraph read"), page::text);
        assertEquals(2, page.page().select("section[lang]").size());
        assertEquals(2, page.page().select(".is-right").size());
        assertTrue(page.page().select("form[action=" + READ + "]").isEmpty(), "the trainer may only look");
    }

    @Test
    void aWeakSourceIsConfirmedAndTakenBackOnTheRecord() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);
        assertTrue(coordinator.get(FROM_MEMORY).text().contains("waits for confirmation"));

        Reply confirmed = set(coordinator, FROM_MEMORY, "confirmed", "yes");
        assertTrue(confirmed.text().contains("Source confirmed by " + SampleSite.COORDINATOR), confirmed::text);
        assertFalse(confirmed.text().contains("waits for confirmation"));

        Reply takenBack = set(coordinator, FROM_MEMORY, "confirmed", "no");
        assertTrue(takenBack.text().contains("waits for confirmation"));
        assertEquals(2, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'lockout.source-confirmed'"));
    }

    @Test
    void aRetiredQuestionIsAskedNoMore() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);

        assertTrue(set(coordinator, READ, "retired", "yes").text().contains("retired"));
        assertEquals(
                1,
                coordinator
                        .get("/lockout/bank?state=retired")
                        .page()
                        .select("table tbody th a")
                        .size());
    }

    @Test
    void sayingTheSameTwiceMakesOneRecord() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);

        set(coordinator, READ, "retired", "yes");
        set(coordinator, READ, "retired", "yes");

        assertEquals(1, count("SELECT count(*) FROM bank_switch"));
    }

    @Test
    void theListIsNarrowedByRuleSetMarkAndTopic() {
        Browser trainer = site.signIn(SampleSite.TRAINER);

        Reply coal = trainer.get("/lockout/bank?rules=msha-coal&mark=MEMORY");
        assertEquals(1, coal.page().select("a[href^=/lockout/bank/]").size());
        assertEquals(
                "",
                trainer.get("/lockout/bank?topic=nothing")
                        .page()
                        .select("tbody th a")
                        .text());
    }

    @Test
    void aPaperKeepsToTheChosenRuleSets() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);
        Reply chosen = coordinator.get("/lockout/bank").sendTo("/lockout/bank", "rules", "msha-mnm", "rules", "site");
        assertEquals(200, chosen.status());

        Browser newHire = site.signIn(SampleSite.NEW_HIRE);
        Reply page = QuizTaker.open(newHire);
        while (QuizTaker.isQuestion(page)) {
            assertTrue(
                    QuizTaker.question(page).source().ruleSets().stream()
                            .anyMatch(rules -> rules.equals("msha-mnm") || rules.equals("site")),
                    page::text);
            page = newHire.get(
                    QuizTaker.answer(page, true).page().select("main a.button").attr("href"));
        }
        assertEquals(1, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'lockout.rules-chosen'"));
    }

    @Test
    void atLeastOneRuleSetIsChosen() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);

        Reply refused = coordinator.get("/lockout/bank").sendTo("/lockout/bank", "rules", "moon");

        assertEquals(422, refused.status());
        assertTrue(refused.text().contains("Choose at least one rule set."));
        assertEquals(0, count("SELECT count(*) FROM bank_rules"));
    }

    private static Reply set(Browser browser, String question, String which, String on) {
        Reply page = browser.get(question);
        return page.sendTo(question, "switch", which, "on", on);
    }

    private long count(String query) {
        return site.database()
                .read(handle -> handle.createQuery(query).mapTo(Long.class).one());
    }
}
