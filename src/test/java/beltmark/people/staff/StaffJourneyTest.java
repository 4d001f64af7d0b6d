package beltmark.people.staff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import beltmark.people.Crew;
import beltmark.people.CrewAt;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The site's clock stands on 5 March 2026. */
@SuppressWarnings("NullAway.Init")
class StaffJourneyTest {

    private static final String PERSON = SampleSite.NEW_HIRE;

    private SampleSite site;
    private Browser admin;

    @BeforeEach
    void start() {
        site = SampleSite.start();
        admin = site.signIn(SampleSite.ADMIN);
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private String path() {
        return "/people/" + site.personId(PERSON);
    }

    private Reply change(String what, String... namesAndValues) {
        return admin.get(path()).sendTo(path() + "/" + what, namesAndValues);
    }

    private String crewOf(String name) {
        return Long.toString(site.crewId(name));
    }

    private String crewOn(String day) {
        Optional<Crew> crew =
                site.database().read(handle -> new CrewAt().find(handle, site.personId(PERSON), LocalDate.parse(day)));
        return crew.map(Crew::name).orElse("none");
    }

    private List<String> records() {
        return site.database()
                .read(handle -> handle.createQuery(
                                "SELECT kind || ' ' || body FROM recordbook_entry WHERE kind LIKE 'people.%' ORDER BY seq")
                        .mapTo(String.class)
                        .list());
    }

    @Test
    void aMoveHoldsFromItsDayAndLeavesEarlierDaysAsTheyWere() {
        Reply moved = change("move", "crew", crewOf(SampleSite.OTHER_SUPERVISOR), "day", "2026-03-01");
        assertEquals(200, moved.status(), moved.text());
        assertTrue(moved.text().contains("Pier crew until 1 Mar 2026"), moved.text());
        assertTrue(moved.text().contains("Silo crew since 1 Mar 2026"), moved.text());
        assertEquals("Pier crew", crewOn("2026-02-28"));
        assertEquals("Silo crew", crewOn("2026-03-01"));
        assertEquals(site.crewId(SampleSite.OTHER_SUPERVISOR), site.crewId(PERSON));
        assertEquals(
                List.of("people.moved {\"from\":\"Pier crew\",\"on\":\"2026-03-01\",\"to\":\"Silo crew\",\"toCrew\":"
                        + crewOf(PERSON) + "}"),
                records());
    }

    @Test
    void aMoveThatBecomesKnownLateEndsAtTheNextOne() {
        change("move", "crew", crewOf(SampleSite.OTHER_SUPERVISOR), "day", "2026-03-01");
        change("move", "crew", crewOf("Farida Rahimi"), "day", "2026-02-01");
        assertEquals("Pier crew", crewOn("2026-01-31"));
        assertEquals("Ore yard crew", crewOn("2026-02-28"));
        assertEquals("Silo crew", crewOn("2026-03-05"));
        assertEquals(site.crewId(SampleSite.OTHER_SUPERVISOR), site.crewId(PERSON));
    }

    @Test
    void aMoveIsRefusedWithItsReason() {
        String silo = crewOf(SampleSite.OTHER_SUPERVISOR);
        assertRefused(change("move", "crew", silo, "day", "2026-03-06"), "has not come yet");
        assertRefused(change("move", "crew", silo, "day", "5 March"), "Enter a day");
        assertRefused(change("move", "crew", crewOf(PERSON), "day", "2026-03-05"), "in that crew already");
        assertEquals(404, change("move", "crew", "999999", "day", "2026-03-05").status());
        assertEquals(List.of(), records());
    }

    private static void assertRefused(Reply reply, String why) {
        assertEquals(422, reply.status(), reply.text());
        assertTrue(reply.page().select(".error").text().contains(why), reply.text());
    }

    @Test
    void theSameFormSentTwiceIsOneRecord() {
        Reply page = admin.get(path());
        String silo = crewOf(SampleSite.OTHER_SUPERVISOR);
        page.sendTo(path() + "/move", "crew", silo, "day", "2026-03-05");
        Reply again = page.sendTo(path() + "/move", "crew", silo, "day", "2026-03-05");
        assertEquals(200, again.status());
        assertEquals(1, records().size());
    }

    @Test
    void rolesHoldFromTheNextRequest() {
        Browser person = site.signIn(PERSON);
        assertEquals(403, person.get("/review").status());
        Reply changed = change("roles", "role", "coordinator");
        assertEquals(
                List.of("coordinator"),
                changed.page().select("[name=role][checked]").eachAttr("value"));
        assertEquals(200, person.get("/review").status());
        assertEquals(
                List.of("people.roles-changed {\"after\":[\"coordinator\"],\"before\":[\"new-hire\"]}"), records());
    }

    @Test
    void nobodyChangesTheirOwnRolesOrLeavesByTheirOwnHand() {
        String own = "/people/" + site.personId(SampleSite.ADMIN);
        Reply page = admin.get(own);
        assertTrue(
                page.page().select("form[action$=roles], form[action$=leave]").isEmpty());
        assertRefusedWith(page.sendElsewhere(own + "/leave", "day", "2026-03-05"), 422);
        assertRefusedWith(page.sendElsewhere(own + "/roles", "role", "new-hire"), 422);
        assertEquals(List.of(), records());
    }

    private static void assertRefusedWith(Reply reply, int status) {
        assertEquals(status, reply.status(), reply.text());
    }

    @Test
    void whoLeavesIsSignedOutAndStaysInTheHistory() {
        Browser person = site.signIn(PERSON);
        Reply left = change("leave", "day", "2026-03-05");
        assertEquals(200, left.status(), left.text());
        assertTrue(person.get("/today").path().startsWith("/sign-in"));
        assertFalse(admin.get("/people").text().contains(PERSON));
        assertTrue(admin.get("/people/gone").text().contains(PERSON));
        assertEquals("Pier crew", crewOn("2026-03-04"));
        assertEquals("none", crewOn("2026-03-05"));
        Reply signIn = site.browser().get("/sign-in/" + crewOf(PERSON) + "/" + site.personId(PERSON));
        assertEquals(404, signIn.status());
    }

    @Test
    void leavingBeforeAMoveOnRecordIsRefused() {
        change("move", "crew", crewOf(SampleSite.OTHER_SUPERVISOR), "day", "2026-03-03");
        assertRefused(change("leave", "day", "2026-03-02"), "later change of crew");
    }

    @Test
    void whoComesBackChoosesAPinAndKeepsTheGap() {
        change("leave", "day", "2026-03-05");
        site.clock().move(Duration.ofDays(30));
        admin = site.signIn(SampleSite.ADMIN);
        assertRefused(change("return", "crew", crewOf(PERSON), "day", "2026-03-04"), "had not left by that day");
        Reply back = change("return", "crew", crewOf(PERSON), "day", "2026-04-01");
        String pin = back.page().select(".shown-once").text();
        assertTrue(pin.matches("\\d{6}"), back.text());
        assertTrue(site.signIn(site.browser(), PERSON, pin).text().contains("Choose your own PIN"));
        assertEquals("none", crewOn("2026-03-31"));
        assertEquals("Pier crew", crewOn("2026-04-01"));
    }

    @Test
    void onlyAdminsSeeThisPage() {
        assertEquals(403, site.signIn(SampleSite.SUPERVISOR).get(path()).status());
        assertFalse(site.signIn(SampleSite.SUPERVISOR).get("/people").body().contains(path() + "\""));
        assertTrue(admin.get("/people").body().contains(path() + "\""));
    }
}
