package beltmark.drawing.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.setup.SetupPart;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Situation;
import beltmark.core.units.Graduation;
import beltmark.drawing.Drawing;
import beltmark.drawing.Svg;
import beltmark.drawing.TapeCloseUp;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every drawing of any problem: drawn from 250 problems of each of two families, in inches and in millimetres. */
class EveryDrawingTest {

    private static final int PROBLEMS = 250;
    private static final Set<SetupPart> ALL = EnumSet.allOf(SetupPart.class);
    private static final List<Graduation> TAPES =
            List.of(Graduation.SIXTEENTH_INCH, Graduation.MILLIMETRE, Graduation.THIRTY_SECOND_INCH);

    /** {@return every drawing of one problem, asked and worked} */
    private static List<Drawing> drawings(String family, ProblemCode code) {
        Situation situation = Sample.situation(Sample.family(family).problem(code));
        Words words = Svg.words(TAPES.get(Integer.parseInt(code.text()) % TAPES.size()));
        List<Drawing> drawings = new ArrayList<>();
        for (Set<SetupPart> told : List.of(Set.<SetupPart>of(), ALL)) {
            SideElevation elevation = new SideElevation(situation, told);
            drawings.add(elevation.orientation(words));
            drawings.add(elevation.sleeve(words));
            for (Orientation orientation : Orientation.values()) {
                drawings.add(elevation.mountMarks(orientation, words));
            }
            for (Side side : Side.values()) {
                drawings.add(new TapeCloseUp(
                                TapeCloseUp.Mark.BELT,
                                side,
                                situation.beltMarks().on(side))
                        .drawing(!told.isEmpty(), words));
            }
        }
        return drawings;
    }

    private static Stream<Svg> rendered(String family, int problems) {
        return Sample.codes(problems)
                .flatMap(code -> drawings(family, code).stream())
                .map(Svg::of);
    }

    @ParameterizedTest
    @ValueSource(strings = {"orientation", "bench"})
    void isTrueToScaleAndLegible(String family) {
        rendered(family, PROBLEMS).forEach(svg -> {
            svg.root().select("[data-dimension]").forEach(dimension -> assertTrueToScale(svg, dimension));
            assertInsideTheSheet(svg);
            assertTextsApart(svg);
        });
    }

    private static void assertTrueToScale(Svg svg, Element dimension) {
        Element line = dimension.expectFirst(".d-measure");
        double paper = Math.abs(Svg.number(line, "y2") - Svg.number(line, "y1"));
        double length = Math.abs(Svg.number(dimension, "data-nm")) / 1e6;
        assertEquals(length / svg.scale(), paper, Svg.ROUNDING, dimension::outerHtml);
    }

    private static void assertInsideTheSheet(Svg svg) {
        Svg.Area sheet = svg.sheet();
        svg.shapeAreas()
                .forEach(area -> assertTrue(sheet.holds(area), () -> area + " is off the sheet\n" + svg.source()));
        for (int i = 0; i < svg.textAreas().size(); i++) {
            Svg.Area area = svg.textAreas().get(i);
            String text = svg.texts().get(i);
            assertTrue(sheet.holds(area), () -> text + " at " + area + " is off the sheet\n" + svg.source());
        }
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

    @Test
    void isHeardAsWellAsSeen() {
        rendered("bench", 30).forEach(svg -> {
            String[] names = svg.root().attr("aria-labelledby").split(" ", -1);
            assertEquals("img", svg.root().attr("role"));
            assertEquals(names[0], svg.root().expectFirst("svg > title").id());
            assertEquals(names[1], svg.root().expectFirst("svg > desc").id());
            assertTrue(svg.root().select("title, desc").stream()
                    .noneMatch(heard -> heard.text().isBlank()));
        });
    }

    @Test
    void hasNothingThatAStrictContentPolicyRefuses() {
        rendered("bench", 30).forEach(svg -> {
            assertTrue(
                    svg.root().select("[style], style, script, image, use, a").isEmpty());
            assertTrue(svg.root().select("*").stream()
                    .flatMap(element -> element.attributes().asList().stream())
                    .noneMatch(attribute -> attribute.getKey().startsWith("on")));
        });
    }

    @Test
    void sharesNoIdWithTheOtherDrawingsOfAProblem() {
        Words words = Svg.words(Graduation.SIXTEENTH_INCH);
        Situation situation = Sample.situation(Sample.family("bench").problem(new ProblemCode("1")));
        List<Drawing> page = new ArrayList<>();
        for (Set<SetupPart> told : List.of(Set.<SetupPart>of(), ALL)) {
            SideElevation elevation = new SideElevation(situation, told);
            page.add(elevation.orientation(words));
            page.add(elevation.sleeve(words));
            page.add(elevation.mountMarks(Orientation.OVERSLUNG, words));
            for (TapeCloseUp.Mark mark : TapeCloseUp.Mark.values()) {
                for (Side side : Side.values()) {
                    page.add(new TapeCloseUp(mark, side, situation.beltMarks().on(side))
                            .drawing(!told.isEmpty(), words));
                }
            }
        }
        Set<String> ids = new HashSet<>();
        page.forEach(drawing -> assertTrue(ids.add(drawing.id()), drawing.id()));
    }

    /** At 360 px wide, less the margins a page may put round it, no text is smaller than 11 px. */
    @Test
    void staysLegibleOnAPhone() {
        rendered("orientation", 30).forEach(svg -> {
            boolean tape = svg.root().attr("aria-labelledby").startsWith("tape");
            double pixels = tape ? 360 / 2.0 : 360;
            double text = Svg.number(svg.root(), "font-size") / svg.sheet().right() * pixels;
            assertTrue(text >= 11, () -> text + " px\n" + svg.source());
        });
    }
}
