package beltmark.drawing.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.problem.bank.spring.AngleScene;
import beltmark.core.units.Angle;
import beltmark.core.units.Graduation;
import beltmark.drawing.Svg;
import beltmark.texts.Words;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class BeltAngleTest {

    private static final Words WORDS = Svg.words(Graduation.SIXTEENTH_INCH);

    private static Stream<AngleScene> scenes() {
        return Sample.codes(200).map(code ->
                (AngleScene) Sample.family("blade-angle").problem(code).scene());
    }

    @Test
    void theReadingEdgeStandsAtTheAngle() {
        scenes().forEach(scene -> {
            List<Element> edges =
                    Svg.of(BeltAngle.protractor(scene, false, WORDS)).root().select("line.d-edge");
            Element edge = edges.get(edges.size() - 1);
            double left = Svg.number(edge, "x1") - Svg.number(edge, "x2");
            double down = Svg.number(edge, "y2") - Svg.number(edge, "y1");
            assertEquals(scene.present().degrees(), Math.toDegrees(Math.atan2(down, left)), 0.05);
        });
    }

    @Test
    void theAngleIsWrittenOnlyOnceItIsTold() {
        scenes().forEach(scene -> {
            String figure = WORDS.quantity(scene.present());
            assertFalse(
                    Svg.of(BeltAngle.protractor(scene, false, WORDS)).texts().contains(figure));
            assertTrue(Svg.of(BeltAngle.protractor(scene, true, WORDS)).texts().contains(figure));
        });
    }

    @Test
    void theArmIsDrawnToScale() {
        scenes().forEach(scene -> {
            Svg svg = Svg.of(PivotedArm.of(scene.arm(), Angle.ZERO, false, WORDS));
            svg.root().select("[data-dimension]").forEach(dimension -> {
                Element line = dimension.expectFirst(".d-measure");
                double paper = Math.abs(Svg.number(line, "y2") - Svg.number(line, "y1"));
                assertEquals(Svg.number(dimension, "data-nm") / 1e6 / svg.scale(), paper, Svg.ROUNDING);
            });
        });
    }
}
