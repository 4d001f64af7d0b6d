package beltmark.drawing.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.problem.Answer;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.units.Graduation;
import beltmark.drawing.Drawing;
import beltmark.drawing.Svg;
import beltmark.drawing.problem.ProblemDrawings;
import beltmark.drawing.problem.Telling;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawings of the families about marks: true to scale, legible, and silent about what is asked. */
class MarkDrawingsTest {

    private static final int PROBLEMS = 120;
    /** At 360 px wide no text is smaller than this. */
    private static final double LEAST_PIXELS = 11;

    private static final List<Graduation> TAPES = List.of(Graduation.SIXTEENTH_INCH, Graduation.MILLIMETRE);

    private static List<Drawing> drawings(Problem problem, Part part, boolean told, Graduation tape) {
        Set<String> solved = told ? problem.parts().stream().map(Part::id).collect(Collectors.toSet()) : Set.of();
        Words words = Svg.words(tape);
        return ProblemDrawings.of(part, new Telling(problem, solved, OwnFigures.NONE, words));
    }

    private static Stream<Problem> problems(String family) {
        return Sample.codes(PROBLEMS).map(Sample.family(family)::problem);
    }

    private static Stream<Svg> rendered(String family) {
        return problems(family)
                .flatMap(problem -> problem.parts().stream()
                        .flatMap(part -> TAPES.stream()
                                .flatMap(tape -> Stream.of(false, true)
                                        .flatMap(told -> drawings(problem, part, told, tape).stream()))))
                .map(Svg::of);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tape-reading",
                "fraction-sums",
                "belt-mark-cup",
                "bracket-square",
                "mount-marks-sloping",
                "pole-length"
            })
    void isTrueToScaleAndLegible(String family) {
        rendered(family).forEach(svg -> {
            svg.root().select("[data-dimension]").forEach(dimension -> assertTrueToScale(svg, dimension));
            assertInsideTheSheet(svg);
            assertTextsApart(svg);
            double pixels = Svg.number(svg.root(), "font-size") / svg.sheet().right() * 360;
            boolean tape = svg.root().attr("aria-labelledby").startsWith("tape");
            assertTrue(tape || pixels >= LEAST_PIXELS, () -> pixels + " px\n" + svg.source());
        });
    }

    private static void assertTrueToScale(Svg svg, Element dimension) {
        Element line = dimension.expectFirst(".d-measure");
        double paper = Math.hypot(
                Svg.number(line, "x2") - Svg.number(line, "x1"), Svg.number(line, "y2") - Svg.number(line, "y1"));
        double length = Math.abs(Svg.number(dimension, "data-nm")) / 1e6;
        assertEquals(length / svg.scale(), paper, 2 * Svg.ROUNDING, dimension::outerHtml);
    }

    private static void assertInsideTheSheet(Svg svg) {
        Svg.Area sheet = svg.sheet();
        Stream.concat(svg.shapeAreas().stream(), svg.textAreas().stream())
                .forEach(area -> assertTrue(sheet.holds(area), () -> area + " is off the sheet\n" + svg.source()));
    }

    private static void assertTextsApart(Svg svg) {
        List<Svg.Area> areas = svg.textAreas();
        for (int i = 0; i < areas.size(); i++) {
            for (int j = 0; j < i; j++) {
                String both = svg.texts().get(i) + " and " + svg.texts().get(j);
                assertTrue(!areas.get(i).overlaps(areas.get(j)), () -> both + " overlap\n" + svg.source());
            }
        }
    }

    /** A tape's own words count lines; of everything else the answer stands nowhere before it is told. */
    @ParameterizedTest
    @ValueSource(strings = {"fraction-sums", "belt-mark-cup", "bracket-square", "mount-marks-sloping", "pole-length"})
    void doesNotTellWhatIsAsked(String family) {
        problems(family)
                .forEach(problem -> problem.parts()
                        .forEach(part -> drawings(problem, part, false, Graduation.MILLIMETRE)
                                .forEach(drawing -> assertSilent(part, Svg.of(drawing)))));
    }

    private static void assertSilent(Part part, Svg svg) {
        part.blanks().forEach(blank -> {
            if (blank.right() instanceof Answer.OfLength right) {
                String dimension = "data-nm=" + right.length().nanometres();
                assertFalse(svg.told().contains(dimension), () -> part.id() + " " + right + "\n" + svg.source());
            }
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tape-reading",
                "fraction-sums",
                "belt-mark-cup",
                "bracket-square",
                "mount-marks-sloping",
                "pole-length"
            })
    void sharesNoIdOnAPage(String family) {
        Problem problem = problems(family).findFirst().orElseThrow();
        List<Drawing> page = new ArrayList<>();
        for (Part part : problem.parts()) {
            page.addAll(drawings(problem, part, true, Graduation.SIXTEENTH_INCH));
        }
        Set<String> ids = new HashSet<>();
        page.forEach(drawing -> assertTrue(ids.add(drawing.id()), drawing.id()));
    }
}
