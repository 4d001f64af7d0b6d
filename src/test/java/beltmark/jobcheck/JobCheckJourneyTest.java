package beltmark.jobcheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The job check over HTTP, with the past year of the demo; today is 5 March 2026. */
class JobCheckJourneyTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 5);
    private static final String WIDE = "/job-check?card=wide-belt-rig";

    private static SampleSite site;

    @BeforeAll
    static void start() {
        site = SampleSite.startWithPastYear();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void asksFirstAndAnswersNothingYet() {
        Reply page = site.signIn(SampleSite.COORDINATOR).get("/job-check");
        assertEquals(200, page.status());
        assertEquals("2", page.page().select("#j-fitters").attr("value"));
        assertEquals("1", page.page().select("[name=also-lockout]").attr("value"));
        assertTrue(page.page().select("#proposed").isEmpty());
    }

    @Test
    void proposesACrewAndSaysWhy() {
        Reply page = site.signIn(SampleSite.COORDINATOR).get(WIDE + "&fitters=1&also-lockout=1");
        String crew = page.page().select("table").text();
        assertTrue(crew.matches(".*Wide-belt rig .*Qualified until .*number \\d of \\d who could.*"), crew);
        assertEquals(2, page.page().select("tbody tr").size());
        assertEquals(
                2,
                page.page().select("tbody td a").eachText().stream().distinct().count(),
                "two people for two places");
    }

    @Test
    void tellsWhatEachLacksWithTheNextStep() {
        Reply page = site.signIn(SampleSite.SUPERVISOR).get(WIDE);
        String dmitri = page.page().select(".checked:contains(Dmitri Vasko)").text();
        assertTrue(dmitri.contains("in training"), dmitri);
        assertTrue(dmitri.contains("worked clean"), dmitri);
        assertTrue(dmitri.contains("Next:"), dmitri);
    }

    @Test
    void tellsWhoLapsesBeforeTheDay() {
        String ahead = WIDE + "&on=" + TODAY.plusDays(100);
        Reply page = site.signIn(SampleSite.COORDINATOR).get(ahead);
        String lapsing = page.page()
                .select("section:has(h2:contains(Who could go today))")
                .text();
        assertTrue(lapsing.contains("Mateo Quispe"), lapsing);
        Reply today = site.signIn(SampleSite.COORDINATOR).get(WIDE);
        assertTrue(today.text().contains("Who could go today, but not on that day (0)"), today::text);
    }

    @Test
    void placesWithoutAnybodyAreSaid() {
        Reply page = site.signIn(SampleSite.SUPERVISOR).get(WIDE + "&fitters=9");
        assertTrue(page.text().contains("Nobody"), page::text);
        assertTrue(page.text().contains("put down for"), page::text);
    }

    @Test
    void theAddressCarriesTheWholeQuestion() {
        Reply asked = site.signIn(SampleSite.COORDINATOR).get(WIDE + "&fitters=3&also-lockout=0&on=2026-04-01");
        String link = asked.page().select("a[href^=/job-check?]").attr("href");
        Reply shared = site.signIn(SampleSite.COORDINATOR).get(link);
        assertEquals(
                asked.page().select("main").text(), shared.page().select("main").text());
    }

    @Test
    void aSupervisorIsAnsweredFromTheOwnCrewAlone() {
        Reply page = site.signIn(SampleSite.SUPERVISOR).get(WIDE + "&crew=" + site.crewId("Linh Tranh"));
        assertTrue(page.text().contains("Mateo Quispe"));
        assertFalse(page.text().contains("Linh Tranh"));
    }

    @Test
    void itNeverSaysThatItIsSafeToStart() {
        Reply page = site.signIn(SampleSite.SUPERVISOR).get(WIDE);
        assertTrue(page.page().select(".caution").text().contains("does not say that it is safe to start work"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/job-check?card=moon-rig",
                "/job-check?card=wide-belt-rig&on=yesterday",
                "/job-check?card=wide-belt-rig&fitters=-3",
                "/job-check?card=wide-belt-rig&fitters=99999999999",
                "/job-check?card=wide-belt-rig&on=1999-01-01",
                "/job-check?card=wide-belt-rig&on=2026-01-01"
            })
    void whateverIsAskedIsAnswered(String path) {
        assertEquals(200, site.signIn(SampleSite.COORDINATOR).get(path).status());
    }

    @Test
    void anUnknownCrewIsNotFound() {
        assertEquals(
                404,
                site.signIn(SampleSite.COORDINATOR).get(WIDE + "&crew=99999").status());
        assertEquals(
                404, site.signIn(SampleSite.COORDINATOR).get("/job-check.csv").status());
    }

    @Test
    void theFileHasARowForEachPersonAndQualification() {
        Reply file = site.signIn(SampleSite.COORDINATOR).get("/job-check.csv?card=wide-belt-rig");
        assertTrue(file.header("Content-Type").startsWith("text/csv"), file.header("Content-Type"));
        // eleven people of three crews, two qualifications, and the names of the columns
        assertEquals(23, file.body().lines().count(), file::body);
        assertTrue(file.body().contains("Mateo Quispe,Pier crew,Wide-belt rig,"), file::text);
    }
}
