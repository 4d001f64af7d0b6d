package beltmark.core.problem.bank.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.blade.EdgeLoads;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Side;
import beltmark.core.setup.Sides;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.Ratio;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The answers against worked figures of an independent script, and what carries from part to part. */
class SpringFamiliesTest {

    private static HardwareCard card(String id) {
        return Sample.content().cards().stream()
                .filter(card -> card.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double amount(Problem problem, int part, int blank) {
        return ((Answer.OfNumber) problem.parts().get(part).blanks().get(blank).right()).amount();
    }

    @ParameterizedTest
    @CsvSource({
        // card, blade in mm, moving kg, exact setting in mm, set; a second program, written from Shigley eq. 10-9
        "narrow-belt-rig, 400, 19.4, 99.59, 3 15/16",
        "narrow-belt-rig, 600, 23.6, 93.11, 3 11/16",
        "wide-belt-rig, 800, 27.8, 100.67, 3 15/16",
        "wide-belt-rig, 1000, 32.0, 97.14, 3 13/16",
        "wide-belt-rig, 1200, 36.2, 93.61, 3 11/16"
    })
    void settingsForHalfANewtonPerMillimetre(String card, int blade, double moving, double exact, String set) {
        LoadScene scene = new LoadScene(card(card), Length.ofMillimetres(blade), new Mass(moving), new LineLoad(0.5));
        assertEquals(exact, scene.setting().result().measured().millimetres(), 0.006);
        assertEquals(Sample.inches(set), scene.set());
    }

    /** A load that was halved by mistake leads on to figures that are right from there. */
    @Test
    void theLoadCarriesThroughToTheSetting() {
        Problem problem = Sample.family("spring-load").problem(new ProblemCode("5"));
        LoadScene scene = (LoadScene) problem.scene();
        double load = amount(problem, 0, 0) / 2;
        double each = (load + scene.moving().kilograms() * 9.80665) / 2;
        OwnFigures own = OwnFigures.NONE.with("spring-load-blade.value", new Answer.OfNumber(load));
        PartGrade grade = PartGrade.of(
                problem.parts().get(1),
                Map.of("value", BigDecimal.valueOf(each).toPlainString() + " N"),
                LengthUnit.INCH,
                own);
        assertEquals(Verdict.CARRIED, grade.worst());
    }

    /** An inch has as many turns as threads: by definition. */
    @Test
    void halfAnInchOnEightThreadsIsFourTurns() {
        NutScene scene = new NutScene(
                card("wide-belt-rig"),
                new Sides(Sample.inches("4 1/4"), Sample.inches("3 1/2")),
                Sample.inches("3 3/4"),
                new NutScene.RodThread(Sample.inches("1/8"), 8));
        assertEquals(Sample.inches("1/2"), scene.change(Side.LEFT).negated());
        Problem problem = Sample.family("nut-turns").problem(new ProblemCode("4"));
        NutScene drawn = (NutScene) problem.scene();
        double turns = drawn.change(Side.LEFT).abs().millimetres()
                / drawn.thread().pitch().millimetres();
        assertEquals(turns, amount(problem, 2, 0), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // left and right force, blade off centre in mm, left and right line load; a second program, blade 1100 mm,
        // springs 1560 mm apart, 34 kg: one spring 1/8 in long and the other short, then the blade 25 mm to the right
        "381.20, 508.26, 0, 0.014023, 0.99694",
        "444.73, 444.73, 25, 0.57441, 0.43655"
    })
    void whatTheEndsFeel(double left, double right, int off, double atLeft, double atRight) {
        EdgeLoads.Layout layout = new EdgeLoads.Layout(
                Length.ofMillimetres(1560), Length.ofMillimetres(1100), Length.ofMillimetres(off), Length.ZERO);
        UnevenScene scene = new UnevenScene(
                card("wide-belt-rig"), new Force(left), new Force(right), new Mass(34).weight(), layout);
        assertEquals(atLeft, scene.ends().result().left().newtonsPerMillimetre(), 2e-4);
        assertEquals(atRight, scene.ends().result().right().newtonsPerMillimetre(), 2e-4);
    }

    /** Whatever the shape, the line load adds up to the load: a triangle or a trapezium. */
    @Test
    void theLineLoadAddsUpToTheLoad() {
        Sample.codes(500).forEach(code -> {
            UnevenScene scene =
                    (UnevenScene) Sample.family("uneven-sides").problem(code).scene();
            EdgeLoads ends = scene.ends().result();
            double mean = (ends.left().newtonsPerMillimetre() + ends.right().newtonsPerMillimetre()) / 2;
            assertEquals(scene.load().newtons(), mean * ends.contact().millimetres(), 1e-6);
        });
    }

    /** A second program: 50.1 mm to touching coils less 6.1 mm of gaps at 3 3/4 in, so a sleeve of 1 5/8 in ends it. */
    @Test
    void theSleeveEndsTheDropBeforeTheCoils() {
        TravelScene scene = new TravelScene(
                card("wide-belt-rig"),
                Length.ofMillimetres(1000),
                Sample.inches("3 3/4"),
                Length.ZERO,
                Length.ZERO,
                Length.ofMillimetres(10));
        assertEquals(43.9, scene.springTravel().millimetres(), 0.06);
        assertEquals("travel-limit.sleeve", scene.check().limit().key());
        assertEquals(Sample.inches("1 5/8").minus(Length.ofMillimetres(10)), scene.margin());
    }

    /** A second program: 34 kg on two springs of 20.01 N/mm; friction of 0.45 about 556 N. */
    @Test
    void bouncesAndHides() {
        BounceScene scene = new BounceScene(
                card("wide-belt-rig"),
                new Mass(34),
                new Force(556.03),
                new Ratio(0.45),
                new BounceScene.Seen(Finding.FREE, Side.LEFT, new Frequency(5.46), Length.ofMillimetres(38)));
        assertEquals(5.4604, scene.expected().hertz(), 5e-4);
        assertEquals(383, scene.band().low().newtons(), 1);
        assertEquals(1011, scene.band().high().newtons(), 1);
    }

    /** The remedy of the cause that a person named is right from there, though the cause was not. */
    @Test
    void theRemedyFollowsFromTheOwnCause() {
        Problem problem = Sample.family("bounce-test").problem(new ProblemCode("1"));
        Finding finding = ((BounceScene) problem.scene()).seen().finding();
        Finding other = finding == Finding.BINDS ? Finding.BLOCKED : Finding.BINDS;
        OwnFigures own = OwnFigures.NONE.with("bounce-cause.pick", new Answer.OfChoice(other.cause()));
        PartGrade grade = PartGrade.of(problem.parts().get(3), Map.of("pick", other.remedy()), LengthUnit.INCH, own);
        assertEquals(Verdict.CARRIED, grade.worst());
    }

    @ParameterizedTest
    @ValueSource(strings = {"spring-load", "nut-turns", "uneven-sides", "sleeve-travel", "bounce-test"})
    void drawsEveryCard(String family) {
        Set<String> drawn = Sample.codes(200)
                .map(code -> Sample.family(family).problem(code).scene().findCard())
                .map(card -> card.orElseThrow().id())
                .collect(Collectors.toSet());
        assertEquals(Sample.content().cards().stream().map(HardwareCard::id).collect(Collectors.toSet()), drawn);
    }

    @Test
    void bothEndsOfTheDropAndEveryFindingComeUp() {
        assertEquals(
                2,
                Sample.codes(200)
                        .map(code -> (TravelScene)
                                Sample.family("sleeve-travel").problem(code).scene())
                        .map(scene -> scene.check().limit())
                        .distinct()
                        .count());
        assertTrue(Sample.codes(200)
                .map(code ->
                        (BounceScene) Sample.family("bounce-test").problem(code).scene())
                .map(scene -> scene.seen().finding())
                .collect(Collectors.toSet())
                .containsAll(Set.of(Finding.values())));
    }
}
