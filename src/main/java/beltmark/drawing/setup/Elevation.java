package beltmark.drawing.setup;

import beltmark.core.setup.Orientation;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Situation;
import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Line;
import beltmark.drawing.Outline;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;

/** A sheet on which sides of a conveyor are drawn: what the elevations have in common. */
final class Elevation {

    static final double TEXT = 5;
    static final double LINE_APART = 6;
    /** Above this many millimetres of paper a range of heights is drawn smaller. */
    static final double MOST_PAPER = 175;

    static final double LARGEST_SCALE = 4;

    /** Where the name of the belt mark begins, right of the post. */
    static final double MARK_NAME_AT = Column.POST_TO + 0.8;

    private static final double BELT_MILLIMETRES = 10;
    private static final double LEAST_BELT = 1.8;
    private static final double STROKE = 1.5;
    private static final double ABOVE_BELT = 1.4;
    /** From the middle of a text down to its baseline, in heights of the text. */
    static final double TO_BASELINE = 0.35;

    final Heights heights;
    final Words words;
    final List<Shape> shapes = new ArrayList<>();

    Elevation(Heights heights, Words words) {
        this.heights = heights;
        this.words = words;
    }

    /** {@return the scale that fits a range of heights on the sheet} */
    static double scale(Reach range) {
        return Heights.scaleFor(range.high().minus(range.low()), MOST_PAPER, LARGEST_SCALE);
    }

    /** {@return the sheet's height of the belt mark} */
    double zero() {
        return heights.y(Length.ZERO);
    }

    void addPost(Column column, double top, double bottom) {
        shapes.add(Box.between(column.x(Column.POST_FROM), top, column.x(Column.POST_TO), bottom, Style.STEEL));
    }

    void addBelt(Column column) {
        shapes.add(
                Outline.brokenBar(column.x(Column.BELT_FROM), column.x(column.width()), beltTop(), zero(), Style.BELT));
    }

    /** Strikes the belt line across the post. */
    void addMark(Column column, double y) {
        shapes.add(Line.of(column.x(Column.POST_FROM - STROKE), y, column.x(Column.POST_TO + STROKE), y, Style.MARK));
    }

    void addTensioner(Column column, Situation situation, Orientation orientation) {
        shapes.addAll(TensionerSketch.of(column, heights, situation, orientation));
    }

    void addEnvelope(Column column, Reach reach, Style style) {
        shapes.add(Box.between(
                column.x(Column.TENSIONER_FROM),
                heights.y(reach.high()),
                column.x(Column.TENSIONER_TO),
                heights.y(reach.low()),
                style));
    }

    /** Names belt, blade and pole where they are. */
    void addNames(Column column, Situation situation) {
        double middle = (column.x(Column.BLADE_FROM) + column.x(column.width())) / 2;
        double pole = heights.y(TensionerSketch.pole(situation));
        shapes.add(Label.centred(middle, beltTop() - ABOVE_BELT, words.say("drawing.belt"), Style.TEXT));
        shapes.add(Label.centred(middle, (zero() + pole) / 2, words.say("drawing.blade"), Style.TEXT));
        shapes.add(Label.centred(middle, pole + TEXT * TO_BASELINE, words.say("drawing.pole"), Style.TEXT));
    }

    /** Points out the belt mark on the post, in the free space above the belt. */
    void addMarkName(Column column) {
        double mark = beltTop() - ABOVE_BELT - LINE_APART;
        String text = words.say("drawing.mark.belt-mark");
        double start = column.x(MARK_NAME_AT);
        double post = column.x(Column.POST_TO - 1.5);
        shapes.add(Line.of(start - 0.5, mark - 1, post, mark + 1.5, Style.THIN));
        shapes.add(Line.of(post, mark + 1.5, post, zero(), Style.THIN));
        shapes.add(Label.from(start, mark, text, Style.TEXT));
    }

    private double beltTop() {
        return zero() - Math.max(LEAST_BELT, BELT_MILLIMETRES / heights.scale());
    }
}
