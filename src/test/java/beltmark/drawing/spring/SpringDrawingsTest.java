package beltmark.drawing.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.blade.EdgeLoads;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.bank.spring.LoadScene;
import beltmark.core.problem.bank.spring.UnevenScene;
import beltmark.core.units.Graduation;
import beltmark.drawing.Drawing;
import beltmark.drawing.Svg;
import beltmark.drawing.problem.ProblemDrawings;
import beltmark.drawing.problem.Telling;
import beltmark.texts.Words;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawings of the problems about springs, on their rendered SVG. */
class SpringDrawingsTest {

    private static final Words WORDS = Svg.words(Graduation.SIXTEENTH_INCH);

    private static Stream<Svg> drawings(String family, boolean told) {
        return Sample.codes(60)
                .map(Sample.family(family)::problem)
                .flatMap(problem -> problem.parts().stream()
                        .flatMap(part -> drawn(problem, part, told).stream())
                        .map(Svg::of));
    }

    private static List<Drawing> drawn(Problem problem, Part part, boolean told) {
        Set<String> solved = told ? problem.parts().stream().map(Part::id).collect(Collectors.toSet()) : Set.of();
        return ProblemDrawings.of(part, new Telling(problem, solved, OwnFigures.NONE, WORDS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"spring-length", "spring-load", "nut-turns", "sleeve-travel", "bounce-test", "blade-angle"})
    void everyDimensionIsToScaleAndOnTheSheet(String family) {
        for (boolean told : new boolean[] {false, true}) {
            drawings(family, told).forEach(svg -> {
                svg.root().select("[data-dimension]").forEach(dimension -> {
                    Element line = dimension.expectFirst(".d-measure");
                    double paper = Math.abs(Svg.number(line, "y2") - Svg.number(line, "y1"));
                    double length = Svg.number(dimension, "data-nm") / 1e6;
                    assertEquals(length / svg.scale(), paper, Svg.ROUNDING, dimension::outerHtml);
                });
                svg.textAreas().forEach(area -> assertTrue(svg.sheet().holds(area), svg::source));
            });
        }
    }

    @Test
    void theAskedSpringLengthStandsNowhereUntilItIsTold() {
        Sample.codes(100).forEach(code -> {
            Problem problem = Sample.family("spring-load").problem(code);
            Part setting = problem.parts().get(4);
            String figure = WORDS.length(((LoadScene) problem.scene()).set());
            Svg asked = Svg.of(drawn(problem, setting, false).get(0));
            assertTrue(asked.texts().contains("?"));
            assertFalse(asked.source().contains(figure));
            assertTrue(asked.root().select("[data-nm]").isEmpty());
            assertTrue(Svg.of(drawn(problem, setting, true).get(0)).texts().contains(figure));
        });
    }

    @Test
    void theLineLoadsStandInProportion() {
        Sample.codes(100).forEach(code -> {
            UnevenScene scene =
                    (UnevenScene) Sample.family("uneven-sides").problem(code).scene();
            EdgeLoads ends = scene.ends().result();
            Element shape = Svg.of(LoadedBlade.of(scene, true, WORDS)).root().expectFirst("polygon.d-chosen");
            List<Double> places = Stream.of(shape.attr("points").split("[ ,]+"))
                    .map(Double::valueOf)
                    .toList();
            double left = places.get(1) - places.get(3);
            double right = places.get(7) - places.get(5);
            double most = Math.max(left, right);
            double heavy =
                    Math.max(ends.left().newtonsPerMillimetre(), ends.right().newtonsPerMillimetre());
            assertEquals(ends.left().newtonsPerMillimetre() / heavy, left / most, 0.002);
            assertEquals(ends.right().newtonsPerMillimetre() / heavy, right / most, 0.002);
            double width = places.get(4) - places.get(2);
            assertEquals(
                    ends.contact().millimetres(), width * scene.layout().span().millimetres() / 120, 0.1);
        });
    }
}
