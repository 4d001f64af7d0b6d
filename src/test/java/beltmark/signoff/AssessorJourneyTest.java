package beltmark.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may be assessor on a day; the clock of the site stands at 5 March 2026. */
class AssessorJourneyTest {

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
    void anAppointedAssessorSignsAndTheRecordSaysSo() {
        Reply signed = SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);
        assertTrue(signed.text().contains("Appointed, record"), signed.text());
        assertTrue(signed.page().select(".flags").text().contains("was appointed"));
    }

    @Test
    void anAppointmentThatIsTakenBackEndsIt() {
        appoint("narrow-belt-rig", "2026-01-01", "2026-03-04", "No longer in the crew.");
        Reply check = check("2026-03-05");
        assertEquals(422, check.status());
        assertTrue(check.text().contains("neither hold the qualification"), check.text());
        assertTrue(check.page().select("[name=pin]").isEmpty());
        assertEquals(0, demonstrations());
    }

    @Test
    void whatCountsIsTheDayOfTheDemonstration() {
        appoint("narrow-belt-rig", "2026-01-01", "2026-03-04", "Until the fourth.");
        Reply signed = check("2026-03-04").send("pin", SampleSite.pin());
        assertEquals(200, signed.status());
        assertEquals(1, demonstrations());
    }

    @Test
    void signingWithoutTheCheckPageIsRefusedToo() {
        appoint("narrow-belt-rig", "2026-01-01", "2026-03-04", "Until the fourth.");
        Reply form = form();
        Reply refused = form.sendElsewhere(form.path() + "/sign", SampleDemonstration.within("pin", SampleSite.pin()));
        assertEquals(422, refused.status());
        assertEquals(0, demonstrations());
    }

    @Test
    void anAppointmentOnAnotherHardwareDoesNotTakeThisOneBack() {
        appoint("wide-belt-rig", "2026-01-01", "2026-03-04", "Narrow rigs only from now on.");
        assertEquals(200, check("2026-03-05").status());
    }

    @Test
    void theCoordinatorSeesWhereEverybodyStands() {
        Reply page = appoint("incline-rig", "2026-03-05", "2026-12-31", "Fitted the first one here.");
        assertTrue(page.text().contains("Appointed 5 Mar 2026 to 31 Dec 2026"), page.text());
        assertEquals(200, page.status());
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "2026-03-05, 2026-03-04, Because, Give two days",
                "2026-03-05, 2029-01-01, Because, Give two days",
                "soon, 2026-03-06, Because, Give two days",
                "2026-03-05, 2026-03-06, ||, Say in at most 200"
            })
    void anAppointmentThatCannotBeIsRefusedAndKeepsWhatWasTyped(
            String first, String last, String reason, String sentence) {
        long before = appointments();
        Reply refused = appoint("incline-rig", first, last, reason);
        assertEquals(422, refused.status());
        assertTrue(refused.text().contains(sentence), refused.text());
        assertEquals(last, refused.page().select("[name=last]").attr("value"));
        assertEquals(before, appointments());
    }

    @Test
    void onlySupervisorsCanBeAppointed() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);
        assertEquals(
                404,
                coordinator
                        .get("/sign-off/assessors/" + site.personId(SampleSite.NEW_HIRE))
                        .status());
        assertFalse(coordinator.get("/sign-off/assessors").text().contains(SampleSite.NEW_HIRE));
    }

    private Reply appoint(String card, String first, String last, String reason) {
        return site.signIn(SampleSite.COORDINATOR)
                .get("/sign-off/assessors/" + site.personId(SampleSite.SUPERVISOR))
                .send("card", card, "first", first, "last", last, "reason", reason);
    }

    private Reply form() {
        return site.signIn(SampleSite.SUPERVISOR)
                .get("/sign-off/" + site.personId(SampleSite.NEW_HIRE) + SampleDemonstration.RIG);
    }

    private Reply check(String on) {
        return form().send(SampleDemonstration.within("on", on));
    }

    private long demonstrations() {
        return count("signoff_demonstration");
    }

    private long appointments() {
        return count("signoff_assessor");
    }

    private long count(String table) {
        return site.database()
                .read(handle -> handle.createQuery("SELECT count(*) FROM " + table)
                        .mapTo(Long.class)
                        .one());
    }
}
