package beltmark.expiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.io.IOException;
import java.io.StringReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The list and the calendars over HTTP, with the past year of the demo; today is 5 March 2026. */
@SuppressWarnings("NullAway.Init")
class ExpiryJourneyTest {

    private SampleSite site;

    @BeforeEach
    void start() {
        site = SampleSite.startWithPastYear();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void listsWhoRunsOutOfWhatWithTheNextStep() {
        Reply page = site.signIn(SampleSite.OTHER_SUPERVISOR).get("/expiry");
        String pilar = page.page()
                .select("tr:contains(Pilar Echeverri):contains(Wide-belt)")
                .text();
        assertEquals("16 Mar 2026 Pilar Echeverri Wide-belt rig 11 days left Pass the lockout quiz.", pilar);
        assertFalse(page.text().contains("Mateo Quispe"), "another crew");
    }

    @Test
    void theCoordinatorSeesAllCrewsOrOne() {
        Browser coordinator = site.signIn(SampleSite.COORDINATOR);
        assertTrue(coordinator.get("/expiry").page().select("h2").size() >= 2);
        Reply one = coordinator.get("/expiry?crew=" + site.crewId("Pilar Echeverri"));
        assertEquals(List.of("Silo crew"), one.page().select("h2").eachText());
        assertEquals(404, coordinator.get("/expiry?crew=999").status());
    }

    @Test
    void theFileHasARowForEach() {
        Reply file = site.signIn(SampleSite.OTHER_SUPERVISOR).get("/expiry.csv");
        assertTrue(
                file.body().contains("2026-03-16,Pilar Echeverri,Silo crew,Wide-belt rig,Pass the lockout quiz."),
                file::body);
    }

    @Test
    void aCalendarIsValidAndHasAWholeDayForEachEnding() throws IOException, ParserException {
        String address = make();
        Reply file = site.browser().get(address);
        assertEquals(200, file.status());
        assertEquals("text/calendar; charset=utf-8", file.header("Content-Type").toLowerCase(java.util.Locale.ROOT));
        Calendar calendar = new CalendarBuilder().build(new StringReader(file.body()));
        assertEquals(List.of(), List.copyOf(calendar.validate(true).getEntries()));
        List<VEvent> events = calendar.getComponents("VEVENT");
        VEvent pilar = events.stream()
                .filter(event -> text(event, Property.SUMMARY).contains("Wide-belt rig, Pilar"))
                .findFirst()
                .orElseThrow();
        assertEquals("20260316", text(pilar, Property.DTSTART));
        assertTrue(pilar.getProperty(Property.DTSTART).orElseThrow().toString().startsWith("DTSTART;VALUE=DATE:"));
        assertEquals("20260305T080000Z", text(pilar, Property.DTSTAMP));
        assertTrue(
                file.body().lines().allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75),
                "lines are folded");
        assertTrue(file.body().endsWith("END:VCALENDAR\r\n"), file::body);
    }

    @Test
    void anEventKeepsItsNameFromDayToDayAndInEveryCalendar() throws IOException, ParserException {
        String address = make();
        List<String> before = names(address);
        site.clock().move(Duration.ofDays(1));
        assertEquals(before, names(address));
        assertEquals(before, names(make()));
        assertEquals(before.size(), before.stream().distinct().count());
    }

    @Test
    void aRevokedCalendarIsGone() {
        String address = make();
        Browser supervisor = site.signIn(SampleSite.OTHER_SUPERVISOR);
        Reply page = supervisor.get("/expiry");
        String revoke = page.page().select("form[action$=/revoke]").attr("action");
        Reply other = site.signIn(SampleSite.SUPERVISOR).get("/expiry");
        Map<String, String> fields = Map.of("csrf", field(other, "csrf"), "operation", field(other, "operation"));
        assertEquals(200, other.browser().post(revoke, fields).status());
        assertEquals(200, site.browser().get(address).status(), "another crew's supervisor cannot revoke it");
        page.sendTo(revoke);
        assertEquals(404, site.browser().get(address).status());
        assertEquals(2, count("recordbook_entry WHERE kind IN ('expiry.feed', 'expiry.revoked')"));
    }

    private static String field(Reply page, String name) {
        return page.page()
                .select("form[action=/expiry/calendars] [name=" + name + "]")
                .attr("value");
    }

    @Test
    void onlyTheHashOfTheTokenIsStored() {
        String address = make();
        String token = address.substring("/calendar/".length(), address.length() - ".ics".length());
        assertEquals(43, token.length(), "256 bits");
        assertEquals(1, count("expiry_feed WHERE length(token_hash) = 32"));
        assertEquals(0, count("recordbook_entry WHERE instr(body, '" + token + "') > 0"));
        assertNotEquals(token, make());
    }

    @Test
    void theAddressIsShownOnce() {
        Reply made = press(site.signIn(SampleSite.OTHER_SUPERVISOR));
        assertFalse(made.page().select(".wraps").isEmpty());
        assertTrue(made.browser().get("/expiry").page().select(".wraps").isEmpty());
    }

    @Test
    void whatIsNoTokenIsNotFound() {
        Stream.of("/calendar/x.ics", "/calendar/.ics", "/calendar/" + "a".repeat(43) + ".ics")
                .forEach(path -> assertEquals(404, site.browser().get(path).status(), path));
    }

    private String make() {
        String shown = press(site.signIn(SampleSite.OTHER_SUPERVISOR))
                .page()
                .select(".wraps")
                .text();
        return URI.create(shown).getPath();
    }

    private static Reply press(Browser supervisor) {
        return supervisor.get("/expiry").sendTo("/expiry/calendars");
    }

    private List<String> names(String address) throws IOException, ParserException {
        Calendar calendar = new CalendarBuilder()
                .build(new StringReader(site.browser().get(address).body()));
        List<VEvent> events = calendar.getComponents("VEVENT");
        return events.stream().map(event -> text(event, Property.UID)).sorted().toList();
    }

    private static String text(VEvent event, String name) {
        Optional<Property> property = event.getProperty(name);
        return property.orElseThrow().getValue();
    }

    private int count(String from) {
        return site.database()
                .read(handle -> handle.createQuery("SELECT count(*) FROM " + from)
                        .mapTo(Integer.class)
                        .one());
    }
}
