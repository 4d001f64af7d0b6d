package beltmark.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.units.Length;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LaneTest {

    private static final double X = 20;
    private static final double TEXT = 5;
    private static final Length LENGTH = Length.ofMillimetres(40);

    private static Lane lane() {
        return new Lane(X, 0, 200, TEXT);
    }

    private static Dimension dimension(Lane lane, double top, double bottom) {
        return lane.dimension("some", LENGTH, "40 mm", new Lane.End(bottom, 30), new Lane.End(top, 35));
    }

    private static Stream<Line> lines(Dimension dimension, Style style) {
        return dimension.parts().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .filter(line -> line.style() == style);
    }

    private static List<Outline> arrows(Dimension dimension) {
        return dimension.parts().stream()
                .filter(Outline.class::isInstance)
                .map(Outline.class::cast)
                .toList();
    }

    private static Label figure(Dimension dimension) {
        return (Label) dimension.parts().get(dimension.parts().size() - 1);
    }

    @Test
    void measuresFromEndToEnd() {
        Line measure =
                lines(dimension(lane(), 50, 90), Style.MEASURE).findFirst().orElseThrow();
        assertEquals(new Line(new Point(X, 50), new Point(X, 90), Style.MEASURE), measure);
    }

    @Test
    void leavesAGapToTheObjectAndRunsPastTheDimensionLine() {
        List<Line> extensions =
                lines(dimension(lane(), 50, 90), Style.EXTENSION).toList();
        assertEquals(Line.of(29.2, 90, 18.5, 90, Style.EXTENSION), extensions.get(0));
        assertEquals(Line.of(34.2, 50, 18.5, 50, Style.EXTENSION), extensions.get(1));
    }

    @Test
    void putsTheFigureLeftOfTheLineToBeReadFromTheRight() {
        Label figure = figure(dimension(lane(), 50, 90));
        assertEquals(new Point(18.9, 70), figure.at());
        assertEquals("rotate(-90 18.9 70.0)", figure.svgTurn());
    }

    @Test
    void pointsArrowsOutwardsWhereThereIsRoomAndInwardsWhereThereIsNot() {
        Outline wide = arrows(dimension(lane(), 50, 90)).get(0);
        Outline narrow = arrows(dimension(lane(), 50, 54)).get(0);
        assertEquals(new Point(X, 50), wide.points().get(0));
        assertEquals(53, wide.points().get(1).y());
        assertEquals(new Point(X, 50), narrow.points().get(0));
        assertEquals(47, narrow.points().get(1).y());
    }

    @Test
    void drawsArrowsThreeTimesAsLongAsWide() {
        List<Point> arrow = arrows(dimension(lane(), 50, 90)).get(0).points();
        assertEquals(
                3,
                (arrow.get(1).y() - arrow.get(0).y())
                        / (arrow.get(2).x() - arrow.get(1).x()),
                1e-9);
    }

    @Test
    void movesTheFigureBeyondTheEndsOfANarrowDimension() {
        double at = figure(dimension(lane(), 50, 54)).at().y();
        double half = TextWidth.of("40 mm", TEXT) / 2;
        assertTrue(at + half < 50 || at - half > 54, "figure at " + at);
    }

    @Test
    void runsTheLineOnUnderAFigureBeyondTheEnds() {
        Dimension narrow = dimension(lane(), 50, 54);
        double at = figure(narrow).at().y();
        assertTrue(lines(narrow, Style.THIN)
                .anyMatch(line -> line.to().y() < at == at < 50
                        && Math.abs(line.to().y() - line.from().y()) > 5));
    }

    @Test
    void keepsFiguresOffLinesThatCrossTheLane() {
        Lane lane = lane();
        lane.keepOff(70);
        double at = figure(dimension(lane, 40, 100)).at().y();
        double half = TextWidth.of("40 mm", TEXT) / 2;
        assertFalse(at - half < 70 && at + half > 70, "figure at " + at);
    }

    @Test
    void keepsFiguresOfTheSameLaneApart() {
        Lane lane = lane();
        double one = figure(dimension(lane, 50, 54)).at().y();
        double other = figure(dimension(lane, 54, 58)).at().y();
        assertTrue(Math.abs(one - other) > TextWidth.of("40 mm", TEXT), one + " and " + other);
    }
}
