package beltmark.glossary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class GlossaryJourneyTest {

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @SuppressWarnings("NullAway.Init")
    private static Browser newHire;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
        newHire = site.signIn(SampleSite.NEW_HIRE);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void tellsEachWordInBothLanguages() {
        Reply page = newHire.get("/glossary");
        assertEquals("belt mark", page.page().select("#belt-mark dt").text());
        assertEquals(
                "marca de banda", page.page().select("#belt-mark [lang=es]").text());
    }

    @Test
    void aProblemUnfoldsTheWordsItUses() {
        Reply page = newHire.get("/practice/mount-marks/7K3M1Q");
        assertTrue(page.page().select("details.words dt").eachText().contains("datum edge"), page.body());
        assertEquals("/glossary", page.page().select("details.words a").attr("href"));
        assertTrue(page.page().select("h1 a, h2 a, label a").isEmpty());
    }

    @Test
    void aQuestionExplainsNoWordBeforeItsAnswer() {
        Reply question = newHire.get("/lockout").sendTo("/lockout");
        assertTrue(question.page().select("details.words").isEmpty());
    }

    @Test
    void theSheetUnfoldsTheWordsItUses() {
        assertTrue(newHire.get("/sheet")
                .page()
                .select("details.words dt")
                .eachText()
                .contains("splice"));
    }
}
