package beltmark.core.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BlueprintTest {

    private static final Blueprint PAPER = new Blueprint(
            "lockout", 2, Audience.AUTHORIZED, 80, 3, List.of("isolation"), Map.of("scope", 2, "tags", 1));

    private static final Bank BANK = new Bank(List.of(
            question("p1", "scope", "isolation", Audience.BOTH, "Q1", "osha-gi", Mark.SAW),
            question("p2", "scope", "isolation", Audience.AFFECTED, "Q2", "osha-gi", Mark.SAW),
            question("s1", "scope", "", Audience.BOTH, "Q3", "osha-gi", Mark.SAW),
            question("s2", "scope", "", Audience.BOTH, "Q3", "osha-gi", Mark.PARALLEL),
            question("s3", "scope", "", Audience.AUTHORIZED, "Q4", "osha-gi", Mark.SAW),
            question("t1", "tags", "", Audience.BOTH, "Q5", "osha-gi", Mark.SAW),
            question("t2", "tags", "", Audience.BOTH, "Q6", "osha-gi", Mark.MEMORY),
            question("m1", "mines", "", Audience.BOTH, "Q7", "msha-mnm", Mark.SAW)));

    @Test
    void drawsOneOfEachPointAndSoManyOfEachTopic() {
        Set<String> ids = ids(PAPER.draw(allowed("osha-gi"), 1));

        assertEquals(4, ids.size());
        assertTrue(ids.containsAll(Set.of("p1", "s3", "t1")), ids::toString);
    }

    @Test
    void neverTakesTwoQuestionsOnOneFactWhereThereAreOthers() {
        for (long seed = 0; seed < 200; seed++) {
            Set<String> ids = ids(PAPER.draw(allowed("osha-gi"), seed));
            assertTrue(!ids.containsAll(Set.of("s1", "s2")), ids::toString);
        }
    }

    @Test
    void takesOthersWhereATopicHasTooFew() {
        List<BankQuestion> allowed = new ArrayList<>(allowed("osha-gi"));
        allowed.removeIf(question -> question.topic().equals("tags"));

        assertEquals(Set.of("p1", "s1", "s2", "s3"), ids(PAPER.draw(allowed, 1)));
    }

    @Test
    void theSameSeedDrawsTheSamePaper() {
        assertEquals(PAPER.draw(allowed("osha-gi"), 7), PAPER.draw(allowed("osha-gi"), 7));
        Set<List<Question>> papers = new HashSet<>();
        for (long seed = 0; seed < 20; seed++) {
            papers.add(PAPER.draw(allowed("osha-gi"), seed));
        }
        assertNotEquals(1, papers.size());
    }

    @Test
    void aPointNobodyCanBeAskedAboutFallsAway() {
        assertEquals(Set.of("m1"), ids(PAPER.draw(allowed("msha-mnm"), 1)));
    }

    // rule sets of the site, confirmed, retired: whether t2 (from memory), s1 (read) and m1 (a mine's) may be asked
    @ParameterizedTest
    @CsvSource({
        "osha-gi,          '', '', false, true,  false",
        "osha-gi,          t2, '', true,  true,  false",
        "osha-gi,          t2, t2, false, true,  false",
        "osha-gi,          '', s1, false, false, false",
        "msha-mnm,         t2, '', false, false, true",
        "osha-gi msha-mnm, '', '', false, true,  true",
    })
    void asksOnlyWhatTheSiteAllows(
            String sets, String confirmed, String retired, boolean memory, boolean read, boolean mine) {
        Set<String> ids = new HashSet<>();
        BANK.allowed(Set.of(sets.split(" ")), new Switches(Set.of(confirmed), Set.of(retired)))
                .forEach(question -> ids.add(question.id()));

        assertEquals(memory, ids.contains("t2"));
        assertEquals(read, ids.contains("s1"));
        assertEquals(mine, ids.contains("m1"));
    }

    @Test
    void refusesMoreThanFivePoints() {
        List<String> six = List.of("a", "b", "c", "d", "e", "f");

        assertThrows(
                IllegalArgumentException.class,
                () -> new Blueprint("lockout", 2, Audience.AUTHORIZED, 80, 3, six, Map.of()));
    }

    private static List<BankQuestion> allowed(String ruleSet) {
        return BANK.allowed(Set.of(ruleSet), Switches.NONE);
    }

    private static Set<String> ids(List<Question> questions) {
        Set<String> ids = new HashSet<>();
        questions.forEach(question -> ids.add(question.id()));
        return ids;
    }

    private static BankQuestion question(
            String id, String topic, String point, Audience audience, String fact, String ruleSet, Mark mark) {
        Source source = new Source(List.of(fact), "29 CFR 1910.147", List.of(ruleSet), mark, Basis.RULE);
        Question question = new Question(
                id, QuestionKind.CHOICE, !point.isEmpty(), List.of("a", "b", "c", "d"), List.of("b"), source);
        return new BankQuestion(question, topic, audience, point.isEmpty() ? null : point, true);
    }
}
