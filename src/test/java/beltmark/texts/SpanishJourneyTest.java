package beltmark.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.time.ZoneOffset;
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

    private static final Set<String> ENGLISH = englishSentences();

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @SuppressWarnings("NullAway.Init")
    private static Browser newHire;

    @SuppressWarnings("NullAway.Init")
    private static Browser supervisor;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
        newHire = inSpanish(SampleSite.NEW_HIRE);
        supervisor = inSpanish(SampleSite.SUPERVISOR);
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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sign-in",
                "/today",
                "/practice/bench/7K3M1Q",
                "/practice/orientation/7K3M1Q",
                "/lockout",
                "/hardware",
                "/hardware/incline-rig",
                "/sheet",
                "/sheet/saved",
                "/board/me",
                "/settings",
                "/no-such-page",
                "/people"
            })
    void aNewHireReadsSpanish(String path) {
        isSpanish(newHire.get(path));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/today", "/board", "/board?on=2030-01-01", "/sign-off", "/people"})
    void aSupervisorReadsSpanish(String path) {
        isSpanish(supervisor.get(path));
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
