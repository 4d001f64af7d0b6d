package beltmark.people.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The site's clock stands on 5 March 2026. */
@SuppressWarnings("NullAway.Init")
class IntakeJourneyTest {

    private static final String IMPORT = "/people/import";
    private static final String TWO_NEW = """
            name,crew,roles,language,lengths,since
            Ana Beltrán,Night crew,,en,mm,2026-03-01
            Tomasz Wilk,night CREW,"supervisor, trainer",,1/32,
            """;

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

    private Reply look(String roster) {
        return admin.get(IMPORT).send("roster", roster);
    }

    private Reply confirm(Reply preview) {
        return preview.sendTo(IMPORT + "/confirm");
    }

    private long countPeople() {
        return site.database()
                .read(handle -> handle.createQuery("SELECT count(*) FROM people_person")
                        .mapTo(Long.class)
                        .one());
    }

    private List<String> records() {
        return site.database()
                .read(handle -> handle.createQuery(
                                "SELECT kind || ' ' || body FROM recordbook_entry WHERE kind LIKE 'people.%' ORDER BY seq")
                        .mapTo(String.class)
                        .list());
    }

    @Test
    void whatWouldChangeIsShownAndNothingStored() {
        long before = countPeople();
        Reply preview = look(TWO_NEW);
        assertEquals(200, preview.status(), preview.text());
        assertTrue(preview.text().contains("2 people are new"), preview.text());
        assertTrue(preview.text().contains("New crews: Night crew."), preview.text());
        assertTrue(preview.text().contains("Supervisor, Trainer"), preview.text());
        assertEquals(before, countPeople());
        assertEquals(List.of(), records());
    }

    @Test
    void storingGivesEverybodyAPinForOneSignIn() {
        Reply arrived = confirm(look(TWO_NEW));
        List<String> pins = arrived.page().select(".slips .figure").eachText();
        assertEquals(2, pins.size(), arrived.text());
        assertTrue(
                site.signIn(site.browser(), "Ana Beltrán", pins.get(0)).text().contains("Choose your own PIN"));
        assertTrue(
                site.signIn(site.browser(), "Tomasz Wilk", pins.get(1)).text().contains("Choose your own PIN"));
        assertEquals(site.crewId("Ana Beltrán"), site.crewId("Tomasz Wilk"));
        assertEquals(
                List.of(
                        "people.joined {\"crew\":\"Night crew\",\"crewId\":" + site.crewId("Ana Beltrán")
                                + ",\"name\":\"Ana Beltrán\",\"on\":\"2026-03-01\",\"roles\":[\"new-hire\"]}",
                        "people.joined {\"crew\":\"Night crew\",\"crewId\":" + site.crewId("Ana Beltrán")
                                + ",\"name\":\"Tomasz Wilk\",\"on\":\"2026-03-05\",\"roles\":[\"supervisor\",\"trainer\"]}"),
                records());
        assertFalse(records().toString().contains(pins.get(0)));
        assertTrue(admin.get("/people/" + site.personId("Ana Beltrán")).text().contains("Night crew since 1 Mar 2026"));
    }

    @Test
    void theSameFormSentTwiceStoresOnceAndShowsNoPinAgain() {
        Reply preview = look(TWO_NEW);
        confirm(preview);
        Reply again = confirm(preview);
        assertEquals(200, again.status());
        assertTrue(again.text().contains("stored already"), again.text());
        assertEquals(2, records().size());
    }

    @Test
    void theSameListOnceMoreChangesNothing() {
        confirm(look(TWO_NEW));
        Reply preview = look(TWO_NEW);
        assertTrue(preview.text().contains("Everybody on this list is here already."), preview.text());
        assertTrue(preview.page().select("form[action$=confirm]").isEmpty());
    }

    @Test
    void everyFaultIsToldAtItsRowAndNothingCanBeStored() {
        Reply preview = look("crew,name,roles,language,lengths,since\n"
                + ",Ana Beltrán,,,,\n"
                + "Night crew,,,,,\n"
                + "Night crew,Bo Lind,boss,,,\n"
                + "Night crew,Cy Ode,,xx,furlong,\n"
                + "Night crew,Di Pax,,,,2026-03-06\n"
                + "Night crew,Ed Roy,,,,soon\n"
                + "Night crew,Fay Sun,,,,\n"
                + "NIGHT CREW,fay sun,,,,\n"
                + "Night crew," + "x".repeat(81) + ",,,,\n");
        List<String> remarks = preview.page().select(".roster .error").eachText();
        assertEquals(
                List.of(
                        "! There is no crew.",
                        "! There is no name.",
                        "! There is no role “boss”.",
                        "! There is no language “xx” here.",
                        "! Lengths cannot be shown in “furlong”.",
                        "! 2026-03-06 has not come yet.",
                        "! “soon” is no day such as 2026-03-05.",
                        "! The same person stands in line 8.",
                        "! The name is longer than 80 letters."),
                remarks);
        assertTrue(preview.text().contains("8 rows have a fault"), preview.text());
        assertTrue(preview.page().select("form[action$=confirm]").isEmpty());
        Reply forged = preview.sendElsewhere(IMPORT + "/confirm", "operation", "x".repeat(22));
        assertEquals(422, forged.status());
        assertEquals(List.of(), records());
    }

    @Test
    void whoIsHereIsLeftAsTheyAreAndANamesakeElsewhereIsPointedOut() {
        Reply preview =
                look("name,crew\n" + SampleSite.NEW_HIRE + ",Pier crew\n" + SampleSite.NEW_HIRE + ",Silo crew\n");
        assertTrue(preview.text().contains("Here already"), preview.text());
        assertTrue(preview.text().contains("Somebody of that name is in Pier crew."), preview.text());
        assertTrue(preview.text().contains("1 person is new"), preview.text());
    }

    @Test
    void whoHasLeftIsNotAddedAsAnother() {
        String path = "/people/" + site.personId(SampleSite.NEW_HIRE);
        admin.get(path).sendTo(path + "/leave", "day", "2026-03-05");
        Reply preview = look("name,crew\n" + SampleSite.NEW_HIRE + ",Pier crew\n");
        assertTrue(preview.text().contains("Bring them back on their own page."), preview.text());
    }

    @Test
    void aListThatCannotBeReadComesBackWithTheReason() {
        assertRefused("", "There is nothing below the first row");
        assertRefused("name,crew", "There is nothing below the first row");
        assertRefused("name,team\nAna,Night crew", "must name a column crew");
        assertRefused("name,crew\n\"Ana,Night crew", "no rows of cells");
        assertRefused("name,crew" + "\nAna,Night".repeat(201), "more than 200 people");
    }

    private void assertRefused(String roster, String why) {
        Reply reply = look(roster);
        assertEquals(422, reply.status(), reply.text());
        assertTrue(reply.page().select(".error").text().contains(why), reply.text());
        assertEquals(roster, reply.page().select("[name=roster]").val());
    }

    @Test
    void aListCanBeChangedAfterLookingAtIt() {
        Reply again = look(TWO_NEW).sendTo(IMPORT + "/again");
        assertTrue(again.page().select("textarea").val().contains("Tomasz Wilk"), again.text());
    }

    @Test
    void aFileCanBeHandedIn() throws IOException, InterruptedException {
        HttpResponse<String> reply = handIn("\uFEFFname;crew\r\nAna Beltrán;Night crew\r\n");
        assertEquals(200, reply.statusCode(), reply.body());
        assertTrue(reply.body().contains("Ana Beltrán"), reply.body());
    }

    @Test
    void aFileThatIsTooLargeIsRefused() throws IOException, InterruptedException {
        assertEquals(413, handIn("x".repeat(100_000)).statusCode());
    }

    private HttpResponse<String> handIn(String file) throws IOException, InterruptedException {
        String csrf = admin.get(IMPORT).page().select("main [name=csrf]").val();
        String body = part("csrf", "", csrf)
                + part("roster", "", "")
                + part("file", "; filename=\"crew.csv\"", file)
                + "--limit--\r\n";
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + site.port() + IMPORT))
                .header("Content-Type", "multipart/form-data; boundary=limit")
                .header("Cookie", "s=" + admin.cookies().get("s"))
                .POST(BodyPublishers.ofString(body))
                .build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    private static String part(String name, String more, String content) {
        return "--limit\r\nContent-Disposition: form-data; name=\"" + name + "\"" + more + "\r\n\r\n" + content
                + "\r\n";
    }
}
