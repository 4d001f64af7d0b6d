package beltmark.core.problem.bank.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.grading.Grade;
import beltmark.core.grading.Grader;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Draw;
import beltmark.core.problem.Exhibit;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Tip;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KitFamiliesTest {

    private static final int CODES = 2_000;

    private static Stream<Problem> problems(String family) {
        return Sample.codes(CODES).map(Sample.family(family)::problem);
    }

    /** The tables as shown are all that a person has: counted anew from them, the same is missing and foreign. */
    @Test
    void theTablesShownLeadToTheAnswers() {
        Map<Integer, Integer> missing = new HashMap<>();
        Map<Integer, Integer> foreign = new HashMap<>();
        problems("kit-check").forEach(problem -> {
            Map<String, Integer> lying = new HashMap<>();
            exhibit(problem, 1)
                    .rows()
                    .forEach(row ->
                            lying.put(option(row.get(0)), (int) row.get(1).amount()));
            Set<String> tooFew = new HashSet<>();
            Set<String> left = new HashSet<>(lying.keySet());
            for (List<Quantity> row : exhibit(problem, 0).rows()) {
                int sides = option(row.get(2)).equals("kit-each-side") ? 2 : 1;
                if (lying.getOrDefault(option(row.get(0)), 0)
                        < sides * row.get(1).amount()) {
                    tooFew.add(option(row.get(0)));
                }
                left.remove(option(row.get(0)));
            }
            missing.merge(tooFew.size(), 1, Integer::sum);
            foreign.merge(left.size(), 1, Integer::sum);
            assertEquals(tooFew.isEmpty() ? Set.of("kit-nothing-missing") : tooFew, picked(problem, 0));
            assertEquals(left.isEmpty() ? Set.of("kit-nothing-foreign") : left, picked(problem, 1));
        });
        assertEquals(Set.of(0, 1, 2), missing.keySet());
        assertEquals(Set.of(0, 1, 2), foreign.keySet());
        assertTrue(
                Math.min(missing.getOrDefault(0, 0), foreign.getOrDefault(0, 0)) > CODES / 5,
                "nothing is right often enough to be believed");
    }

    private static Exhibit exhibit(Problem problem, int index) {
        return problem.parts().get(0).exhibits().get(index);
    }

    private static String option(Quantity word) {
        return ((Word) word).key().replace("problem.option.", "");
    }

    private static Set<String> picked(Problem problem, int part) {
        return ((Answer.OfSeveral) problem.parts().get(part).blanks().get(0).right()).options();
    }

    @Test
    void aPairCountedOnOneSideOnlyIsNamed() {
        Problem problem = problems("kit-check")
                .filter(one -> {
                    KitScene scene = (KitScene) one.scene();
                    return scene.tooFew().size() == 1
                            && scene.tooFew().stream().allMatch(line -> scene.lying(line) >= line.asked());
                })
                .findFirst()
                .orElseThrow();
        assertEquals(
                "one-side-for-both",
                grade(problem.parts().get(0), "kit-nothing-missing").slip());
    }

    @Test
    void aSpareTakenForForeignIsNamed() {
        Problem problem = problems("kit-check")
                .filter(one -> ((KitScene) one.scene()).spare().size() == 1
                        && ((KitScene) one.scene()).foreign().isEmpty())
                .findFirst()
                .orElseThrow();
        String spare = ((KitScene) problem.scene()).spare().get(0).option();
        assertEquals("spare-for-foreign", grade(problem.parts().get(1), spare).slip());
    }

    private static Grade grade(Part part, String typed) {
        return Grader.grade(part.blanks().get(0), typed, LengthUnit.INCH, OwnFigures.NONE);
    }

    /** What the spring presses on decides the order: common practice, no published source. */
    @Test
    void theSpringIsAboveTheBaseOverslungAndBelowItUnderslung() {
        assertEquals("lock-nut adjusting-nut washer spring base pole", names(PartsOrder.of(Orientation.OVERSLUNG)));
        assertEquals("base pole spring washer adjusting-nut lock-nut", names(PartsOrder.of(Orientation.UNDERSLUNG)));
    }

    private static String names(List<String> order) {
        return order.stream().map(item -> item.replace("turning-", "")).collect(Collectors.joining(" "));
    }

    @Test
    void theMarksAreTheBeltMarksAndTheOffsetOfTheNewWayRound() {
        Set<Orientation> ways = new HashSet<>();
        Set<Tip> tips = new HashSet<>();
        problems("turning-over").forEach(problem -> {
            TurningScene scene = (TurningScene) problem.scene();
            double offset = scene.card().mountOffset(scene.tip(), scene.now()).millimetres();
            List<Blank> marks = problem.parts().get(1).blanks();
            assertEquals(scene.beltMarks().left().millimetres() + offset, millimetres(marks.get(0)), 1e-9);
            assertEquals(scene.beltMarks().right().millimetres() + offset, millimetres(marks.get(1)), 1e-9);
            ways.add(scene.now());
            tips.add(scene.tip());
        });
        assertEquals(Set.of(Orientation.values()), ways);
        assertEquals(Set.of(Tip.values()), tips);
    }

    private static double millimetres(Blank blank) {
        return ((Answer.OfLength) blank.right()).length().millimetres();
    }

    @ParameterizedTest
    @ValueSource(strings = {"kit-check", "turning-over"})
    void everyCardIsDrawnAndFewDrawsAreUnfair(String family) {
        Set<String> cards = problems(family)
                .map(problem -> problem.scene().findCard().orElseThrow().id())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                Sample.content().cards().stream().map(HardwareCard::id).collect(Collectors.toCollection(TreeSet::new)),
                cards);
        int draws = Sample.codes(CODES)
                .mapToInt(code ->
                        Sample.family(family).trial(code, Draw.of(family, code)).draws())
                .sum();
        assertTrue(draws < 2 * CODES, family + " took " + draws + " draws");
    }
}
