package beltmark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Blueprint;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.Switches;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Ten thousand papers as a site would draw them. */
class PapersTest {

    private static final int SITTINGS = 10_000;
    private static final List<String> RULE_SETS = List.of("osha-gi", "osha-constr", "msha-mnm", "msha-coal", "site");
    private static final Papers PAPERS =
            QuizContent.papers(Texts.load(ZoneOffset.UTC).keys());

    @Test
    void nothingOutsideTheChosenRuleSetsAndNothingUnconfirmedIsEverDrawn() {
        Random random = new Random(20261125);
        for (int sitting = 0; sitting < SITTINGS; sitting++) {
            Set<String> chosen =
                    RULE_SETS.stream().filter(rules -> random.nextBoolean()).collect(Collectors.toSet());
            Switches switches = switches(random);
            List<BankQuestion> allowed = PAPERS.bank().allowed(chosen, switches);
            for (Blueprint paper : PAPERS.blueprints()) {
                paper.draw(allowed, random.nextLong()).forEach(question -> check(question, paper, chosen, switches));
            }
        }
    }

    @Test
    void underTheRuleSetsInForceAPaperIsWholeAndHasItsCriticalQuestions() {
        List<BankQuestion> allowed = PAPERS.bank().allowed(Set.copyOf(PAPERS.ruleSets()), Switches.NONE);
        for (Blueprint paper : PAPERS.blueprints()) {
            for (long seed = 0; seed < 1_000; seed++) {
                List<Question> drawn = paper.draw(allowed, seed);
                assertEquals(paper.size(), drawn.size());
                assertEquals(
                        paper.points().size(),
                        drawn.stream().filter(Question::critical).count());
            }
        }
    }

    private static void check(Question question, Blueprint paper, Set<String> chosen, Switches switches) {
        BankQuestion banked = PAPERS.bank().find(question.id()).orElseThrow();
        assertTrue(question.source().ruleSets().stream().anyMatch(chosen::contains), question.id());
        assertTrue(banked.audience().fits(paper.audience()), question.id());
        assertFalse(switches.retired().contains(question.id()), question.id());
        assertTrue(
                !question.source().mark().needsConfirmation()
                        || switches.confirmed().contains(question.id()),
                question.id());
    }

    private static Switches switches(Random random) {
        List<String> confirmed = new ArrayList<>();
        List<String> retired = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            confirmed.add(any(random));
            retired.add(any(random));
        }
        return new Switches(Set.copyOf(confirmed), Set.copyOf(retired));
    }

    private static String any(Random random) {
        List<BankQuestion> all = PAPERS.bank().questions();
        return all.get(random.nextInt(all.size())).id();
    }
}
