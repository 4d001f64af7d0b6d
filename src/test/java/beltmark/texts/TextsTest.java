package beltmark.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.content.ContentFault;
import beltmark.content.ContentFaults;
import beltmark.content.ContentFile;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class TextsTest {

    private static final String SAMPLE = """
            mark:
              up: "Measure up {offset} from the belt mark."
              tries: "{count, plural, one {# try} other {# tries}} left"
              plain: The card doesn't say.
            over: overslung
            way: "It goes {way}, pulled by {force}, since {day}, seen {seen}."
            """;

    /** Names and words that both languages share; shorter ones, such as units and "no", may be the same anyway. */
    private static final Set<String> SAME_IN_BOTH =
            Set.of("review.test.twice-value", "signoff.conveyor-suggestions", "web.site.name");

    private static ContentFile file(String path, String text) {
        return new ContentFile("content/texts/" + path, text.getBytes(StandardCharsets.UTF_8));
    }

    private static Words words(Graduation graduation) {
        return Texts.load(List.of(file("en/demo.yaml", SAMPLE)), ZoneOffset.UTC).words(Language.EN, graduation);
    }

    @Test
    void namesTextsByFileAndKey() {
        assertEquals("The card doesn't say.", words(Graduation.SIXTEENTH_INCH).say("demo.mark.plain"));
    }

    @Test
    void tellsALengthInTheReadersGraduation() {
        Map<String, Length> values = Map.of("offset", Length.ofInches(4.75));
        assertEquals(
                "Measure up 4 3/4 in from the belt mark.",
                words(Graduation.SIXTEENTH_INCH).say("demo.mark.up", values));
        assertEquals(
                "Measure up 120.6 mm from the belt mark.",
                words(Graduation.MILLIMETRE).say("demo.mark.up", values));
    }

    @Test
    void choosesByNumber() {
        assertEquals("1 try left", words(Graduation.MILLIMETRE).say("demo.mark.tries", Map.of("count", 1)));
        assertEquals("3 tries left", words(Graduation.MILLIMETRE).say("demo.mark.tries", Map.of("count", 3)));
    }

    @Test
    void tellsWordsQuantitiesAndDates() {
        String said = words(Graduation.MILLIMETRE)
                .say(
                        "demo.way",
                        Map.of(
                                "way",
                                new Word("demo.over"),
                                "force",
                                new Newtons(1234.56),
                                "day",
                                LocalDate.of(2026, 3, 5),
                                "seen",
                                Instant.parse("2026-03-05T14:05:00Z")));
        assertEquals("It goes overslung, pulled by 1,235 N, since 5 Mar 2026, seen 5 Mar 2026, 14:05.", said);
    }

    @Test
    void tellsThreeFigures() {
        Words words = words(Graduation.MILLIMETRE);
        assertEquals("0.0123", words.number(0.012345));
        assertEquals("12.3", words.number(12.345));
        assertEquals("0", words.number(0));
    }

    @Test
    void refusesUnknownKeyAndMissingValue() {
        Words words = words(Graduation.MILLIMETRE);
        assertThrows(IllegalStateException.class, () -> words.say("demo.nothing"));
        assertThrows(IllegalStateException.class, () -> words.say("demo.mark.up"));
    }

    @Test
    void reportsEveryFaultWithFileAndLine() {
        ContentFaults refused = assertThrows(
                ContentFaults.class,
                () -> Texts.load(
                        List.of(
                                file("en/a.yaml", "one: text\ntwo: {three: 3}\none: again\nlist: [x]\n"),
                                file("en/b.yaml", "Big: x\nbad: \"{open\"\nnumbered: \"{0} of\"\nempty: \"\"\n"),
                                file("en/c.yaml", "key: \"open\n"),
                                file("xx/d.yaml", "key: x\n")),
                        ZoneOffset.UTC));
        List<String> places = refused.faults().stream()
                .map(fault -> fault.file().substring("content/texts/".length()) + ":" + fault.line())
                .toList();
        assertEquals(
                List.of(
                        "en/a.yaml:2",
                        "en/a.yaml:3",
                        "en/a.yaml:4",
                        "en/b.yaml:1",
                        "en/b.yaml:2",
                        "en/b.yaml:3",
                        "en/b.yaml:4",
                        "en/c.yaml:1",
                        "xx/d.yaml:0"),
                places);
    }

    @Test
    void offersALanguageOnlyWhenItIsWhole() {
        ContentFaults refused = assertThrows(
                ContentFaults.class,
                () -> Texts.load(
                        List.of(file("en/a.yaml", "one: \"{x}\"\ntwo: b"), file("es/a.yaml", "one: \"{y}\"")),
                        ZoneOffset.UTC));
        assertEquals(2, refused.faults().size());
        ContentFault first = refused.faults().get(0);
        assertTrue(first.text().startsWith("a.one"), first.text());
    }

    @Test
    void shippedTextsLoadAndReadLengths() {
        Texts shipped = Texts.load(ZoneId.of("UTC"));
        assertTrue(shipped.languages().contains(Language.EN));
        assertEquals(Set.copyOf(shipped.keys()).size(), shipped.keys().size());
        Words words = shipped.words(Language.EN, Graduation.SIXTEENTH_INCH);
        assertEquals("Read as 4 3/4 in (120.65 mm).", words.reading(LengthReader.read("4-3/4", LengthUnit.INCH)));
        assertTrue(words.reading(LengthReader.read("4 17/16", LengthUnit.INCH)).contains("5 1/16"));
    }

    @Test
    void tellsNumbersWithAPointInSpanishToo() {
        Words spanish = Texts.load(ZoneOffset.UTC).words(Language.ES, Graduation.MILLIMETRE);
        assertEquals("12.3", spanish.number(12.345));
        assertEquals("12,345", spanish.number(12345));
        assertEquals("5 mar. 2026", spanish.day(LocalDate.of(2026, 3, 5)));
    }

    @Test
    void spanishSaysEverythingInItsOwnWords() {
        Texts texts = Texts.load(ZoneOffset.UTC);
        Map<String, String> spanish = texts.patterns(Language.ES);
        Set<String> same = new TreeSet<>();
        texts.patterns(Language.EN).forEach((key, english) -> {
            boolean hasWords =
                    english.replaceAll("\\{\\w+(, number[^}]*)?}", "").matches("(?s).*\\p{L}{5}.*");
            if (hasWords && english.equals(spanish.get(key))) {
                same.add(key);
            }
        });
        assertEquals(SAME_IN_BOTH, same, "translate these, or name them when they are units or names");
    }

    private record Newtons(double amount) implements Quantity {
        @Override
        public String unit() {
            return "N";
        }
    }
}
