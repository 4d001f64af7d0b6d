package beltmark.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProcedureJourneyTest {

    private static final String STEPS = "Tell the affected\nStop the belt\nOpen the disconnect\nLock it";

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
    void theCoordinatorEntersAProcedureAndEverybodyReadsIt() {
        Reply kept = enter(STEPS);

        assertEquals("/procedures/mistral-north", kept.path());
        Reply read = site.signIn(SampleSite.NEW_HIRE).get("/procedures/mistral-north");
        assertTrue(read.text().contains("Open the disconnect"), read::text);
        assertTrue(read.text().contains("22 kW"), read::text);
        assertTrue(read.text().contains("gauge at zero"), read::text);
        assertFalse(read.page().select("aside.caution").isEmpty());
        assertEquals(1, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'procedure.entered'"));
    }

    @Test
    void whatIsMissingIsToldAndWhatWasTypedIsKept() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);

        Reply refused = coordinator.get("/procedures/enter").send("machine", "Mistral", "steps", "one\ntwo");

        assertEquals(422, refused.status());
        assertTrue(refused.text().contains("Enter 3 to 10 steps"), refused::text);
        assertTrue(refused.text().contains("This is missing"), refused::text);
        assertEquals("Mistral", refused.page().select("[name=machine]").attr("value"));
        assertEquals(0, count("SELECT count(*) FROM procedure_version"));
    }

    @Test
    void theSameMachineIsNotEnteredTwice() {
        enter(STEPS);

        assertTrue(enter(STEPS).text().contains("There is a procedure of this machine already"));
        assertEquals(1, count("SELECT count(*) FROM procedure_version"));
    }

    @Test
    void papersAskAboutItAndANewVersionMakesItsHoldersDue() {
        enter(STEPS);
        sitTheQuiz();
        assertTrue(coordinatorReads().text().contains("up to date"));

        Reply changed = site.signIn(SampleSite.COORDINATOR)
                .get("/procedures/mistral-north/change")
                .send("reason", "a second lock", "steps", STEPS + "\nTry the start");

        assertTrue(changed.text().contains("Version 2"), changed::text);
        assertTrue(coordinatorReads().text().contains("due: asked about version 1"));
        assertEquals(1, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'procedure.changed'"));
        assertEquals(1, count("SELECT count(*) FROM qualification_fact WHERE kind = 'event'"));
    }

    @Test
    void whatSaysTheSameIsNoNewVersion() {
        enter(STEPS);

        site.signIn(SampleSite.COORDINATOR)
                .get("/procedures/mistral-north/change")
                .send("reason", "nothing at all");

        assertEquals(1, count("SELECT count(*) FROM procedure_version"));
    }

    private Reply enter(String steps) {
        return site.signIn(SampleSite.COORDINATOR)
                .get("/procedures/enter")
                .send(
                        "machine",
                        "Mistral north",
                        "use",
                        "Changing blades",
                        "energy-1",
                        "22 kW",
                        "energy-kind-1",
                        "electrical",
                        "point-1",
                        "Head disconnect",
                        "point-location-1",
                        "beside the drive",
                        "point-verification-1",
                        "start tried",
                        "point-2",
                        "Air valve",
                        "point-kind-2",
                        "pneumatic",
                        "point-location-2",
                        "below the deck",
                        "point-verification-2",
                        "gauge at zero",
                        "steps",
                        steps);
    }

    /** Sits a paper with the right answers, those made from the procedure among them. */
    private void sitTheQuiz() {
        List<String> asked = ProcedureSitter.sit(site.signIn(SampleSite.NEW_HIRE));

        assertTrue(asked.stream().anyMatch(ask -> ask.contains("Mistral north")), asked::toString);
        assertEquals(1, count("SELECT passed FROM lockout_result"));
    }

    private Reply coordinatorReads() {
        return site.signIn(SampleSite.COORDINATOR).get("/procedures/mistral-north");
    }

    private long count(String query) {
        return site.database()
                .read(handle -> handle.createQuery(query).mapTo(Long.class).one());
    }
}
