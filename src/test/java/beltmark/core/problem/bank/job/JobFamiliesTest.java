package beltmark.core.problem.bank.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.grading.Grade;
import beltmark.core.grading.Grader;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Draw;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.SeveralBlank;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Graduation;
import beltmark.core.units.LengthUnit;
import beltmark.problem.ProblemWords;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The problems about the job as a whole: right orders, the slips behind wrong ones, causes read off the numbers. */
class JobFamiliesTest {

    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);

    private static Stream<Problem> problems(String family) {
        return Sample.codes(2_000).map(Sample.family(family)::problem);
    }

    private static Problem problem(String family, String code) {
        return Sample.family(family).problem(new ProblemCode(code));
    }

    private static Blank blank(Problem problem, int part) {
        return problem.parts().get(part).blanks().get(0);
    }

    private static double fact(Problem problem, String name) {
        return Objects.requireNonNull(problem.scene().facts().get(name)).amount();
    }

    private static Grade grade(Blank blank, String typed) {
        return Grader.grade(blank, typed, LengthUnit.INCH, OwnFigures.NONE);
    }

    /** Common practice, no published source: locked out and tried before all, and each pair one way round only. */
    @Test
    void anInstallationBeginsWithTheLock() {
        problems("installation-order").forEach(problem -> {
            List<String> order = ((OrderBlank) blank(problem, 0)).rightOrder();
            assertEquals(List.of("install-lock-out", "install-try"), order.subList(0, 2));
            assertTrue(order.size() >= 6 && order.size() <= 8);
            assertComesFirst(order, "install-belt-mark", "install-mount-mark");
            assertComesFirst(order, "install-mount-mark", "install-brackets");
            assertComesFirst(order, "install-brackets", "install-pole");
            assertComesFirst(order, "install-centre", "install-springs");
            assertComesFirst(order, "install-springs", "install-bounce");
            assertComesFirst(order, "install-lock-nuts", "install-bounce");
            assertComesFirst(order, "install-guards", "install-run");
        });
    }

    private static void assertComesFirst(List<String> order, String first, String then) {
        assertFalse(
                order.contains(first) && order.contains(then) && order.indexOf(first) > order.indexOf(then),
                () -> first + " " + then + " " + order);
    }

    /** 29 CFR 1910.147(d)(1)-(6): preparation; shutdown; isolation; device application; stored energy; verification. */
    @Test
    void lockingOutFollowsTheSixParagraphs() {
        Blank order = blank(problem("lockout-order", "A1"), 0);
        String right = "lo-prepare lo-shut-down lo-isolate lo-lock lo-relieve lo-verify";
        String lockFirst = "lo-prepare lo-shut-down lo-lock lo-isolate lo-relieve lo-verify";
        String verifyFirst = "lo-verify lo-prepare lo-shut-down lo-isolate lo-lock lo-relieve";
        assertEquals(Verdict.RIGHT, grade(order, right).verdict());
        assertEquals("early-lock", grade(order, lockFirst).slip());
        assertEquals("verified-first", grade(order, verifyFirst).slip());
    }

    /** Whatever reads above nought holds energy (m g h, k y²/2, p, w g H, V); friction is not counted on. */
    @Test
    void whatReadsAboveNoughtHoldsEnergy() {
        problems("lockout-order").forEach(problem -> {
            Set<String> holding = Stream.of("lo-weight", "lo-springs", "lo-air", "lo-incline", "lo-drive")
                    .filter(source -> fact(problem, source + "-state") > 0)
                    .collect(Collectors.toSet());
            assertEquals(holding, ((SeveralBlank) blank(problem, 1)).rightOptions());
            assertFalse(holding.isEmpty());
        });
    }

    /** The cause is read off the numbers again; common practice, no published source. */
    @Test
    void theCauseOfAFaultStandsInTheTable() {
        problems("faults").forEach(problem -> {
            double left = fact(problem, "spring-left");
            double right = fact(problem, "spring-right");
            double set = fact(problem, "spring-set");
            String cause = ((ChoiceBlank) blank(problem, 1)).rightOption();
            assertEquals(left < set && right < set, cause.equals("fault-too-hard"));
            assertEquals(left > set && right > set, cause.equals("fault-too-light"));
            assertEquals(left != right, cause.equals("fault-uneven"));
            assertEquals(
                    fact(problem, "beyond-left") != fact(problem, "beyond-right"), cause.equals("fault-off-centre"));
            assertEquals(
                    fact(problem, "splice") > fact(problem, "sleeve"),
                    Set.of("fault-tall-splice", "fault-little-sleeve").contains(cause));
        });
    }

    /** Statics: the ends share the load evenly where springs are alike and the blade is in the middle, N = N0 + 2 k d. */
    @Test
    void theLineLoadsFollowFromTheSprings() {
        problems("faults").forEach(problem -> {
            double left = fact(problem, "load-left");
            double right = fact(problem, "load-right");
            boolean alike = fact(problem, "spring-left") == fact(problem, "spring-right")
                    && fact(problem, "beyond-left") == fact(problem, "beyond-right");
            assertEquals(alike, Math.abs(left - right) < 1e-6);
            if (alike) {
                HardwareCard card = problem.scene().findCard().orElseThrow();
                double shorter = fact(problem, "spring-set") - fact(problem, "spring-left");
                double more = 2 * card.spring().rate().newtonsPerMillimetre() * shorter / fact(problem, "blade");
                assertEquals(fact(problem, "wanted") + more, left, 1e-6);
            }
        });
    }

    @Test
    void theRemedyFollowsFromTheOwnCause() {
        Problem problem = problems("faults")
                .filter(one -> ((ChoiceBlank) blank(one, 1)).rightOption().equals("fault-nicked"))
                .findFirst()
                .orElseThrow();
        OwnFigures own = OwnFigures.NONE.with("fault-cause.pick", new Answer.OfChoice("fault-loose-nut"));
        Grade carried = Grader.grade(blank(problem, 2), "fault-lock-nut", LengthUnit.INCH, own);
        assertEquals(Verdict.CARRIED, carried.verdict());
        assertEquals("not-lock-nut", grade(blank(problem, 2), "fault-lock-nut").slip());
    }

    @Test
    void everyCardAndEveryFaultIsDrawn() {
        Set<String> cards = problems("faults")
                .map(problem -> problem.scene().findCard().orElseThrow().id())
                .collect(Collectors.toSet());
        Set<String> causes = problems("faults")
                .map(problem -> ((ChoiceBlank) blank(problem, 1)).rightOption())
                .collect(Collectors.toSet());
        assertEquals(Sample.content().cards().size(), cards.size());
        assertEquals(Fault.values().length, causes.size());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everythingIsSaidInBothLanguages(Language language) {
        ProblemWords words = new ProblemWords(TEXTS.words(language, Graduation.SIXTEENTH_INCH));
        Stream.of("installation-order", "lockout-order", "faults")
                .flatMap(JobFamiliesTest::problems)
                .forEach(problem -> problem.parts().forEach(part -> {
                    words.told(problem.givens());
                    words.told(part.givens());
                    words.exhibits(part);
                    assertFalse(words.steps(part).isEmpty());
                    part.blanks().forEach(blank -> {
                        assertFalse(words.told(blank, blank.right()).isBlank());
                        blank.wrongAnswers().forEach(wrong -> {
                            assertFalse(words.told(blank, wrong.answer()).isBlank());
                            assertFalse(words.slip(part.id(), wrong.slip()).isBlank());
                        });
                    });
                }));
    }

    @ParameterizedTest
    @ValueSource(strings = {"installation-order", "lockout-order", "faults"})
    void fewDrawsAreRejected(String family) {
        Map<Boolean, Long> draws = Sample.codes(1_000)
                .map(code ->
                        Sample.family(family).trial(code, Draw.of(family, code)).draws())
                .collect(Collectors.partitioningBy(count -> count == 1, Collectors.counting()));
        assertTrue(draws.getOrDefault(true, 0L) >= 600, family + " " + draws);
    }
}
