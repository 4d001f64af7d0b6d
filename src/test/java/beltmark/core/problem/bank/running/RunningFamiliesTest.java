package beltmark.core.problem.bank.running;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.grading.Grader;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import beltmark.drawing.Dimension;
import beltmark.drawing.problem.ProblemDrawings;
import beltmark.drawing.problem.Telling;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The problems about the running belt, worked again by hand from their own numbers. */
class RunningFamiliesTest {

    private static final Words WORDS = Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.SIXTEENTH_INCH);

    private static double fact(Problem problem, String name) {
        return Objects.requireNonNull(problem.scene().facts().get(name)).amount();
    }

    private static double right(Problem problem, int part) {
        return ((NumberBlank) problem.parts().get(part).blanks().get(0)).rightAmount();
    }

    /** kg/h = (g/m2)(width m)(v m/s) 3.6; efficiency 1 - after/before; in series 1 - product(1 - each): plain products. */
    @Test
    void carryback() {
        Sample.codes(500).map(Sample.family("carryback")::problem).forEach(problem -> {
            double hourly = fact(problem, "after") * fact(problem, "dirty-width") / 1000 * fact(problem, "speed") * 3.6;
            double efficiency = 1 - fact(problem, "after") / fact(problem, "before");
            assertEquals(hourly, right(problem, 0), 1e-6 * hourly);
            assertEquals(hourly * fact(problem, "running") / 3600 / 1000, right(problem, 1), 1e-6 * right(problem, 1));
            assertEquals(100 * efficiency, right(problem, 2), 1e-6);
            assertEquals(100 * (1 - (1 - efficiency) * (1 - fact(problem, "second-cleaner"))), right(problem, 3), 1e-6);
        });
    }

    /** D = mu N and P = mu N v, as in mechanics texts. */
    @Test
    void dragAndPower() {
        Sample.codes(500).map(Sample.family("drag-power")::problem).forEach(problem -> {
            double drag = fact(problem, "line-load") * fact(problem, "blade") * fact(problem, "friction");
            assertEquals(drag, right(problem, 0), 1e-6 * drag);
            assertEquals(drag * fact(problem, "speed"), right(problem, 1), 1e-6 * drag * 5);
        });
    }

    /** Both springs lengthen by the wear: N = N0 - 2 k w. */
    @Test
    void wear() {
        Sample.codes(500).map(Sample.family("wear-retension")::problem).forEach(problem -> {
            double load = fact(problem, "load");
            double rate = fact(problem, "rate");
            double limit = (1 - fact(problem, "keep")) * load / (2 * rate);
            assertEquals(load - 2 * rate * fact(problem, "wear"), right(problem, 0), 1e-6 * load);
            assertEquals(limit, right(problem, 1), 1e-5);
            assertEquals(limit / fact(problem, "wear-per-1000-hours") * 1000, right(problem, 2), 0.5);
        });
    }

    /** m g h; k y2/2 each; isentropic expansion of air (ASME PCC-2, seen as an excerpt); t = R C ln(V0/V). */
    @Test
    void storedEnergy() {
        Sample.codes(500).map(Sample.family("stored-energy")::problem).forEach(problem -> {
            double fall = fact(problem, "mass") * 9.80665 * fact(problem, "height") / 1000;
            assertEquals(fall, right(problem, 0), 1e-6 * fall);
            double absolute = (fact(problem, "gauge") + 0.101325) * 1e6;
            double air =
                    2.5 * absolute * fact(problem, "receiver") / 1000 * (1 - Math.pow(101_325 / absolute, 0.4 / 1.4));
            assertEquals(air, right(problem, 2), 1e-6 * air);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"drag-power", "wear-retension", "stored-energy"})
    void everyCardIsDrawn(String family) {
        Set<String> drawn = Sample.codes(200)
                .map(Sample.family(family)::problem)
                .flatMap(problem -> problem.scene().findCard().stream())
                .map(HardwareCard::id)
                .collect(Collectors.toSet());
        assertEquals(Sample.content().cards().size(), drawn.size());
    }

    @Test
    void anOwnDragCarriesIntoThePower() {
        Problem problem = Sample.family("drag-power").problem(new ProblemCode("7"));
        double own = right(problem, 0) * 1.31;
        OwnFigures figures = OwnFigures.NONE.with("drag-force.force", new Answer.OfNumber(own));
        String typed = own * fact(problem, "speed") + " W";
        Verdict verdict = Grader.grade(problem.parts().get(1).blanks().get(0), typed, LengthUnit.MILLIMETRE, figures)
                .verdict();
        assertEquals(Verdict.CARRIED, verdict);
    }

    @ParameterizedTest
    @ValueSource(strings = {"carryback", "drag-power"})
    void theDrawnWidthsAreThoseOfTheProblem(String family) {
        Sample.codes(100).map(Sample.family(family)::problem).forEach(problem -> {
            Telling telling = new Telling(problem, Set.of(), OwnFigures.NONE, WORDS);
            Set<Length> drawn = ProblemDrawings.of(problem.parts().get(0), telling).stream()
                    .flatMap(drawing -> drawing.shapes().stream())
                    .filter(Dimension.class::isInstance)
                    .map(shape -> ((Dimension) shape).length())
                    .collect(Collectors.toSet());
            assertTrue(drawn.contains(problem.scene().facts().get("belt-width")));
            assertEquals(2, drawn.size());
        });
    }
}
