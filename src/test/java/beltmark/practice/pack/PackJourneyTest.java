package beltmark.practice.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.ProblemCode;
import beltmark.core.units.Graduation;
import beltmark.core.units.LengthPrinter;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A pack of paper sheets, from its making to the answers that were written on it. */
class PackJourneyTest {

    private SampleSite site;
    private Browser trainer;

    @BeforeEach
    void start() {
        site = SampleSite.start();
        trainer = site.signIn(SampleSite.TRAINER);
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void whatWasWrittenCountsAsOnScreenAndIsMarkedAsFromPaper() {
        Reply pack = make();
        Reply sheet = trainer.get(firstSheet(pack));
        Reply stored = sheet.send(field(sheet), right(sheet));
        assertTrue(stored.text().contains("Typed in"), stored::text);
        assertEquals(1, count("SELECT count(*) FROM practice_answer WHERE verdict = 'right'"));
        assertEquals(
                1,
                count("SELECT count(*) FROM recordbook_entry WHERE kind = 'practice.answer'"
                        + " AND subject <> actor AND body LIKE '%\"paperPack\":%'"));
        assertEquals(1, count("SELECT answers FROM mastery_skill WHERE family = 'spring-length'"));
    }

    @Test
    void whatCannotBeReadIsAskedAgainAndNothingIsStored() {
        Reply sheet = trainer.get(firstSheet(make()));
        Reply again = sheet.send(field(sheet), "about four");
        assertEquals(422, again.status());
        assertTrue(again.text().contains("That is not a length"), again::text);
        assertEquals(
                "about four",
                again.page().select("input[name=" + field(sheet) + "]").val());
        assertEquals(0, count("SELECT count(*) FROM practice_answer"));
    }

    @Test
    void sheetsAndKeyAreFilesToPrint() {
        Reply pack = make();
        for (String file : List.of("sheets.pdf", "key.pdf")) {
            Reply reply =
                    trainer.get(pack.page().select("a[href$=" + file + "]").attr("href"));
            assertEquals(200, reply.status());
            assertTrue(reply.header("Content-Type").startsWith("application/pdf"), file);
        }
    }

    @Test
    void aPackWithoutFamilyOrPersonIsNotMade() {
        Reply again = trainer.get("/packs").send("count", "9");
        assertEquals(422, again.status());
        assertTrue(again.text().contains("No family is chosen"), again::text);
        assertTrue(again.text().contains("from 1 to 5"), again::text);
        assertEquals(0, count("SELECT count(*) FROM practice_pack"));
    }

    private Reply make() {
        Reply form = trainer.get("/packs");
        String person = form.page().select("input[name=person]").val();
        return form.send("family", "spring-length", "person", person, "count", "1");
    }

    private static String firstSheet(Reply pack) {
        List<Element> links = pack.page().select("a[href*=/enter/]");
        return links.get(0).attr("href");
    }

    private static String field(Reply sheet) {
        return sheet.page().select("form[action*=enter] input[data-reading]").attr("name");
    }

    private static String right(Reply sheet) {
        String code = sheet.page().select("h2 .code").text();
        LengthBlank blank = (LengthBlank) Sample.family("spring-length")
                .problem(new ProblemCode(code))
                .parts()
                .get(0)
                .blanks()
                .get(0);
        return LengthPrinter.print(blank.rightLength(), Graduation.SIXTEENTH_INCH);
    }

    private int count(String select) {
        return site.database()
                .read(handle -> handle.createQuery(select).mapTo(Integer.class).one());
    }
}
