package beltmark.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever has chosen Spanish meets no English sentence. */
class SpanishJourneyTest {

    private static final int SHORTEST_SENTENCE = 12;

    private static final int MOST_ALIKE = 3;
    private static final int FEWEST_PAGES = 12;

    private static final Set<String> ENGLISH = englishSentences();

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @SuppressWarnings("NullAway.Init")
    private static Browser newHire;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
        newHire = inSpanish(SampleSite.NEW_HIRE);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    private static Browser inSpanish(String name) {
        Browser browser = site.signIn(name);
        browser.get("/settings").send("language", "es");
        return browser;
    }

    /** Texts that need no values and are long enough to be no name or unit. */
    private static Set<String> englishSentences() {
        Texts texts = Texts.load(ZoneOffset.UTC);
        Map<String, String> spanish = texts.patterns(Language.ES);
        Set<String> sentences = new TreeSet<>();
        texts.patterns(Language.EN).forEach((key, english) -> {
            boolean plain = english.indexOf('{') < 0 && english.length() > SHORTEST_SENTENCE;
            if (plain && !english.equals(spanish.get(key))) {
                sentences.add(english.replace("''", "'").replaceAll("\\s+", " ").strip());
            }
        });
        return sentences;
    }

    private static void isSpanish(Reply reply) {
        assertEquals("es", reply.page().select("html").attr("lang"), reply.path());
        assertEquals(List.of(), findEnglish(reply), reply.path());
    }

    private static List<String> findEnglish(Reply reply) {
        Document page = reply.page();
        // a word of the trade is also told in English, and marked as such
        page.select("[lang=en]:not(html)").remove();
        String all =
                page.text() + " " + String.join(" ", page.select("[aria-label]").eachAttr("aria-label"));
        return ENGLISH.stream().filter(all::contains).toList();
    }

    @Test
    void findsEnglishWhereItStands() {
        assertFalse(findEnglish(site.signIn(SampleSite.OTHER_NEW_HIRE).get("/today"))
                .isEmpty());
    }

    /** Everything that links lead to from the start page: of addresses that differ in numbers only, a few. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                SampleSite.NEW_HIRE,
                SampleSite.SUPERVISOR,
                SampleSite.COORDINATOR,
                SampleSite.TRAINER,
                SampleSite.ADMIN
            })
    void everyPageThatLinksLeadToIsSpanish(String name) {
        Browser browser = inSpanish(name);
        Deque<String> ahead = new ArrayDeque<>(List.of("/today", "/settings", "/no-such-page"));
        Set<String> known = new HashSet<>(ahead);
        Map<String, Integer> alike = new HashMap<>();
        while (!ahead.isEmpty()) {
            String path = ahead.remove();
            if (alike.merge(path.replaceAll("[?#].*", "").replaceAll("[0-9]+", "0"), 1, Integer::sum) > MOST_ALIKE) {
                continue;
            }
            Reply reply = browser.get(path);
            if (reply.header("Content-Type").startsWith("text/html")) {
                isSpanish(reply);
                reply.page().select("main a[href^=/]").eachAttr("href").stream()
                        .filter(known::add)
                        .forEach(ahead::add);
            }
        }
        assertTrue(alike.size() >= FEWEST_PAGES, alike.keySet()::toString);
    }

    @Test
    void theSignInIsSpanishWhereItIsChosen() {
        Browser browser = site.browser();
        Reply crews = browser.get("/language/es?next=/sign-in");
        isSpanish(crews);
        Reply names = browser.get(crews.page().select("main .way").attr("href"));
        isSpanish(names);
        isSpanish(browser.get(names.page().select("main .way").attr("href")));
    }

    @Test
    void whatAnAnswerBringsIsSpanish() {
        Reply problem = newHire.get("/practice/spring-length/7K3M1Q");
        isSpanish(problem.send("both", "1"));
        isSpanish(newHire.get("/practice/spring-length/7K3M1Q").send("both", "8"));
        Reply question = newHire.get("/lockout").sendTo("/lockout");
        isSpanish(question);
        isSpanish(question.sendTo(question.page().select("main form").attr("action")));
    }

    @Test
    void aSheetIsSpanish() {
        isSpanish(newHire.get("/sheet/show"));
        isSpanish(newHire.get("/sheet/show?card=wide-belt-rig&tip=carbide&blade=1000mm&left=38&right=38.5&slope=12"
                + "&above=18&below=20&belt=42&inside=48&outside=54&splice=3/8&speed=490&wander=1&off=0&way=high"
                + "&obstacle=none"));
    }
}
