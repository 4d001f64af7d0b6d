package beltmark.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.Sample;
import beltmark.SampleSite;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The trainer's look at every family. */
class PreviewJourneyTest {

    private static SampleSite site;
    private static Browser trainer;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
        trainer = site.signIn(SampleSite.TRAINER);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void everyFamilyCanBeLookedAtInBothLanguagesAndUnits() {
        Sample.content().families().forEach(family -> {
            for (String choice :
                    new String[] {"language=en&graduation=SIXTEENTH_INCH", "language=es&graduation=MILLIMETRE"}) {
                Reply page = trainer.get("/preview?family=" + family.id() + "&code=A1&" + choice);
                assertEquals(200, page.status(), family.id());
                assertFalse(page.page().select(".right-answer").isEmpty(), family.id());
            }
        });
    }

    @Test
    void everyCardCanBeChosen() {
        Sample.content().cards().forEach(card -> {
            Reply page = trainer.get("/preview?family=bench&code=A1&card=" + card.id());
            assertTrue(page.text().contains(Sample.says("hardware.name." + card.id())), page::text);
        });
    }

    @Test
    void theReportNamesEveryFamily() {
        Reply report = trainer.get("/preview/report");
        assertEquals(
                Sample.content().families().size(),
                report.page().select("tbody tr").size());
    }

    @Test
    void aFamilyThatThereIsNotIsNotFound() {
        assertEquals(404, trainer.get("/preview?family=nothing").status());
    }
}
