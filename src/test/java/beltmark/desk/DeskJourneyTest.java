package beltmark.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser.Reply;
import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import beltmark.lockout.QuizTaker;
import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Paragraphs are those of 29 CFR 1910.147, as quoted in state law with the same numbering. */
class DeskJourneyTest {

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
    void anOrderHoldsThePersonBackOnTheBoard() {
        Reply ordered = order();

        assertTrue(ordered.path().matches("/desk/orders/\\d+"), ordered::path);
        assertTrue(ordered.text().contains("took the lock off for a colleague"), ordered::text);
        assertTrue(board().contains("■ held"), this::board);
        assertEquals(1, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'desk.retraining-ordered'"));
    }

    @Test
    void aMissedLastDayIsSaidInAWordAndWithASign() {
        order();
        assertTrue(desk().text().contains("by 19 Mar 2026"), () -> desk().text());

        site.clock().move(Duration.ofDays(15));

        assertTrue(desk().text().contains("✕ overdue since 19 Mar 2026"), () -> desk().text());
    }

    /** (c)(7)(iii)(C): retraining re-establishes proficiency, so each of the three has to be fresh. */
    @Test
    void anOrderIsClosedOnlyWithTrainingAFreshPaperAndAFreshObservation() {
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of()); // before the order, so not fresh
        String address = order().path();

        Reply refused = close(address, "", "");
        assertEquals(422, refused.status());
        for (String missing : List.of("training", "fresh paper", "fresh observation")) {
            assertTrue(refused.text().contains(missing + " is missing"), refused::text);
        }
        assertFalse(close(address, "2026-03-05", "").text().contains("training is missing"));
        assertTrue(close(address, "2026-03-04", "").text().contains("training is missing"));

        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of());
        refused = close(address, "2026-03-05", "");
        assertFalse(refused.text().contains("fresh paper is missing"), refused::text);
        assertTrue(refused.text().contains("fresh observation is missing"), refused::text);
        assertTrue(board().contains("■ held"), this::board);

        assertTrue(close(address, "2026-03-05", "2026-03-05").text().contains("✓ closed"));
        assertFalse(board().contains("■ held"), this::board);
        assertEquals(1, count("SELECT count(*) FROM recordbook_entry WHERE kind = 'desk.retraining-closed'"));
    }

    @Test
    void aDemonstrationSignedAfterTheOrderIsAnObservation() {
        String address = order().path();
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of());
        SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);

        Reply closed = coordinator(address).send("trained", "2026-03-05", "trainer", "Rafael Mourato");

        assertTrue(closed.text().contains("✓ closed"), closed::text);
    }

    @Test
    void whatIsMissingInAnOrderIsTold() {
        Reply refused = coordinator("/desk/orders/new").send("reason", "", "due", "2020-01-01");

        assertEquals(422, refused.status());
        assertTrue(refused.text().contains("Choose from the list"), refused::text);
        assertTrue(refused.text().contains("a day from today"), refused::text);
        assertEquals(0, count("SELECT count(*) FROM desk_order"));
    }

    /** (c)(6)(i)(A): the inspector is somebody other than those who use the procedure. */
    @Test
    void theInspectorIsNobodyWhoUsesTheProcedure() {
        enterProcedure();

        Reply among = inspect(SampleSite.NEW_HIRE, "yes", "good");
        assertEquals(422, among.status());
        assertTrue(among.text().contains("must not be one of those who use the procedure"), among::text);
        Reply notApart = inspect(SampleSite.TRAINER, "", "good");
        assertTrue(notApart.text().contains("Confirm that the inspector does not use"), notApart::text);
        assertEquals(0, count("SELECT count(*) FROM desk_inspection"));
    }

    /** (c)(6)(ii): the machine, the date, the employees included, the person who inspected. */
    @Test
    void anInspectionIsListedByMachineAndIsOverdueAfterAYear() {
        enterProcedure();
        assertTrue(desk().text().contains("none on record by 5 Mar 2027"), () -> desk().text());

        Reply kept = inspect(SampleSite.TRAINER, "yes", "good");

        assertTrue(kept.text().contains("5 Mar 2026: nothing found"), kept::text);
        assertTrue(kept.text().contains("Included: Mateo Quispe. Inspector: Rafael Mourato."), kept::text);
        site.clock().move(Duration.ofDays(366));
        assertTrue(desk().text().contains("✕ overdue since 5 Mar 2027"), () -> desk().text());
    }

    @Test
    void aFindingIsAnEventOfTheProcedureUntilAnInspectionFindsNothing() {
        enterProcedure();

        assertEquals(422, inspect(SampleSite.TRAINER, "yes", "finding").status());
        inspect(SampleSite.TRAINER, "yes", "finding", "reason", "no try of the start");
        assertEquals(
                1,
                count(
                        "SELECT count(*) FROM qualification_fact WHERE kind = 'event'"
                                + " AND subject = 'inspection-failed' AND scope = 'procedure' AND scope_id = 'lockout-mistral'"));
        assertTrue(desk().text().contains("! 5 Mar 2026: with findings"), () -> desk().text());

        inspect(SampleSite.TRAINER, "yes", "good");
        assertEquals(1, count("SELECT count(*) FROM qualification_fact WHERE kind = 'release'"));
    }

    /** (c)(7)(iv): each employee's name and the dates of training, and nothing else. */
    @Test
    void theCertificationHasNamesAndDatesOfTraining() throws IOException {
        String address = order().path();
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of());
        site.clock().move(Duration.ofDays(2));
        close(address, "2026-03-07", "2026-03-07");

        Reply page = coordinator("/desk/certification");
        assertTrue(page.text().contains("Mateo Quispe 5 Mar 2026; 7 Mar 2026"), page::text);
        List<CSVRecord> rows = CSVFormat.RFC4180
                .parse(new StringReader(coordinator("/desk/certification.csv").body()))
                .getRecords();
        assertEquals(List.of("Employee", "Dates of training"), rows.get(0).toList());
        assertTrue(
                rows.stream().anyMatch(row -> row.toList().equals(List.of("Mateo Quispe", "2026-03-05; 2026-03-07"))));
    }

    private Reply order() {
        return coordinator("/desk/orders/new")
                .send(
                        "person",
                        Long.toString(site.personId(SampleSite.NEW_HIRE)),
                        "code",
                        "belief",
                        "reason",
                        "took the lock off for a colleague");
    }

    private Reply close(String address, String trained, String observed) {
        return coordinator(address)
                .send(
                        "trained",
                        trained,
                        "trainer",
                        "Rafael Mourato",
                        "observed",
                        observed,
                        "observation",
                        observed.isEmpty() ? "" : "Ingrid Solheim watched a whole lockout on Mistral");
    }

    private void enterProcedure() {
        coordinator("/procedures/enter")
                .send(
                        "machine",
                        "Mistral",
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
                        "steps",
                        "Stop the belt\nOpen the disconnect\nLock it");
    }

    private Reply inspect(String inspector, String apart, String result, String... more) {
        String[] fields = new String[] {
            "procedure",
            "mistral",
            "included",
            Long.toString(site.personId(SampleSite.NEW_HIRE)),
            "inspector",
            Long.toString(site.personId(inspector)),
            "result",
            result,
            apart.isEmpty() ? "nothing" : "apart",
            "yes"
        };
        String[] all = Arrays.copyOf(fields, fields.length + more.length);
        System.arraycopy(more, 0, all, fields.length, more.length);
        return coordinator("/desk/inspections/new").send(all);
    }

    private Reply coordinator(String path) {
        return site.signIn(SampleSite.COORDINATOR).get(path);
    }

    private Reply desk() {
        return coordinator("/desk");
    }

    /** What the supervisor reads in the line of the new hire. */
    private String board() {
        return site.signIn(SampleSite.SUPERVISOR)
                .get("/board")
                .page()
                .select("tr:contains(Mateo Quispe)")
                .text();
    }

    private long count(String query) {
        return site.database()
                .read(handle -> handle.createQuery(query).mapTo(Long.class).one());
    }
}
