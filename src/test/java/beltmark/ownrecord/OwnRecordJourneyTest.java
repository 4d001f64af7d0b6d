package beltmark.ownrecord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A new hire sat the quiz as the demo's past year has it, and the supervisor gave out a PIN. */
class OwnRecordJourneyTest {

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @BeforeAll
    static void start() {
        site = SampleSite.startWithPastYear();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static long countRecords(String name) {
        return site.database()
                .read(handle -> handle.createQuery(
                                "SELECT count(*) FROM recordbook_entry WHERE subject = :id OR actor = :id")
                        .bind("id", site.personId(name))
                        .mapTo(Long.class)
                        .one());
    }

    @Test
    void everythingRecordedOfAPersonIsInBothFiles() throws IOException {
        Browser browser = site.signIn(SampleSite.OTHER_NEW_HIRE);
        Reply csv = browser.get("/my-record.csv");
        assertEquals("attachment; filename=\"my-record.csv\"", csv.header("Content-Disposition"));
        List<CSVRecord> rows =
                CSVParser.parse(new StringReader(csv.body()), CSVFormat.RFC4180).getRecords();
        JsonNode entries =
                new ObjectMapper().readTree(browser.get("/my-record.json").body());
        assertTrue(countRecords(SampleSite.OTHER_NEW_HIRE) > 10);
        assertEquals(countRecords(SampleSite.OTHER_NEW_HIRE), rows.size() - 1);
        assertEquals(countRecords(SampleSite.OTHER_NEW_HIRE), entries.size());
        for (int i = 0; i < entries.size(); i++) {
            assertEquals(entries.get(i).get("record").asText(), rows.get(i + 1).get(0));
            assertEquals(
                    entries.get(i).get("body"),
                    new ObjectMapper().readTree(rows.get(i + 1).get(6)));
        }
    }

    @Test
    void aSignOffIsInTheRecordOfBoth() {
        String assessor =
                site.signIn(SampleSite.SUPERVISOR).get("/my-record.csv").body();
        assertTrue(assessor.contains("signoff.demonstration"), assessor);
        assertTrue(assessor.contains("," + SampleSite.SUPERVISOR + ","), assessor);
    }

    @Test
    void aQuizUnderWayStaysSealedForADay() throws IOException {
        Browser browser = site.signIn(SampleSite.NEW_HIRE);
        browser.get("/lockout").sendTo("/lockout");
        assertEquals(0, lastEntry(browser).get("body").size());
        site.clock().move(Duration.ofDays(1));
        assertTrue(lastEntry(site.signIn(SampleSite.NEW_HIRE)).get("body").size() > 0);
    }

    private static JsonNode lastEntry(Browser browser) throws IOException {
        JsonNode entries =
                new ObjectMapper().readTree(browser.get("/my-record.json").body());
        JsonNode last = entries.get(entries.size() - 1);
        assertEquals("lockout.sitting", last.get("kind").asText());
        return last;
    }
}
