package beltmark.drawing.spring;

import beltmark.core.units.Length;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Lane;
import beltmark.drawing.Line;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One or two springs on a sheet. A length that is given or told is a dimension, to scale; one that is asked is a
 * dimension line with a question mark, and its spring is drawn as long as a free one, so that nothing can be taken off it.
 */
public final class SpringView {

    private static final double TEXT = 5;
    private static final double WIDTH = 120;
    private static final double TOP = 26;
    private static final double PAPER = 62;
    private static final double LANE = 27;
    private static final double LINE_APART = 6;
    private static final double ARROW = 3;

    private final Words words;
    private final Heights heights;
    private final List<Shape> shapes = new ArrayList<>();
    private final StringBuilder heard = new StringBuilder();

    private SpringView(Length longest, Words words) {
        this.words = words;
        double scale = Heights.scaleFor(longest, PAPER, 1);
        this.heights = new Heights(TOP + longest.millimetres() / scale, scale);
    }

    /**
     * Draws the spring whose length is asked.
     *
     * @param id of the drawing
     * @param free the free length over the washer, as long as it is drawn until its length is told
     * @param set over the washer, told or asked
     * @param washer its thickness
     * @param told whether the length is told
     */
    public static Drawing setting(String id, Length free, Length set, Length washer, boolean told, Words words) {
        SpringView view = new SpringView(free, words);
        SpringColumn column = new SpringColumn(WIDTH / 2 - 12, view.heights, told ? set : free, washer);
        view.shapes.addAll(column.shapes());
        view.addNames(column);
        if (told) {
            view.addDimension(column, LANE, "spring-length", set, Length.ZERO, set);
        } else {
            view.addAsked(column);
        }
        return view.drawing(id + (told ? "-worked" : ""), "drawing-spring.one", told ? "" : "asked");
    }

    /** {@return the spring of a load: free length and coil beside each other once the coil is told} */
    public static Drawing coil(String id, Length free, Length coil, Length washer, boolean told, Words words) {
        SpringView view = new SpringView(free.plus(washer), words);
        SpringColumn column = new SpringColumn(WIDTH / 2 - 12, view.heights, (told ? coil : free).plus(washer), washer);
        view.shapes.addAll(column.shapes());
        view.addNames(column);
        view.addDimension(column, LANE, told ? "coil" : "free", told ? coil : free, Length.ZERO, told ? coil : free);
        return view.drawing(id + (told ? "-worked" : ""), told ? "drawing-spring.coil" : "drawing-spring.free", "");
    }

    /** {@return both springs as they are set, and as wanted once that may be told} */
    public static Drawing pair(String id, Length left, Length right, Length wanted, Length washer, Words words) {
        SpringView view = new SpringView(Length.max(wanted, Length.max(left, right)), words);
        view.addSide(26, "left", left, wanted, washer);
        view.addSide(84, "right", right, wanted, washer);
        return view.drawing(id, "drawing-spring.pair", "wanted");
    }

    private void addSide(double middle, String side, Length present, Length wanted, Length washer) {
        SpringColumn column = new SpringColumn(middle, heights, present, washer);
        shapes.addAll(column.shapes());
        double y = heights.y(wanted);
        shapes.add(Line.of(middle - 22, y, middle + 20, y, Style.CHOSEN));
        addDimension(column, LANE - 3, "spring-" + side, present, Length.ZERO, present);
        shapes.add(Label.centred(middle, LINE_APART, words.say("drawing.side." + side), Style.STRONG));
    }

    private void addDimension(SpringColumn column, double lane, String id, Length length, Length from, Length to) {
        Lane at = new Lane(column.middle() + lane, TOP - LINE_APART, heights.y(Length.ZERO) + SpringColumn.BASE, TEXT);
        double edge = column.middle() + SpringColumn.HALF;
        shapes.add(at.dimension(
                id,
                length,
                words.length(length),
                new Lane.End(heights.y(to), edge),
                new Lane.End(heights.y(from), edge + 3)));
        heard.append(' ').append(words.say("drawing-spring.dimension." + id, Map.of("length", length)));
    }

    /** No dimension: a dimension tells its length in the page's source. */
    private void addAsked(SpringColumn column) {
        double x = column.middle() + LANE;
        double top = heights.y(column.measured());
        double base = heights.y(Length.ZERO);
        double edge = column.middle() + SpringColumn.HALF;
        shapes.add(Line.of(edge + 0.8, top, x + 1.5, top, Style.EXTENSION));
        shapes.add(Line.of(edge + 3.8, base, x + 1.5, base, Style.EXTENSION));
        shapes.add(Line.of(x, top, x, base, Style.THIN));
        shapes.add(arrow(x, top, 1));
        shapes.add(arrow(x, base, -1));
        shapes.add(Label.from(x + 3, (top + base) / 2, "?", Style.STRONG));
    }

    private static Outline arrow(double x, double tip, double way) {
        double back = tip + way * ARROW;
        return new Outline(
                List.of(new Point(x, tip), new Point(x - 0.5, back), new Point(x + 0.5, back)), true, Style.ARROW);
    }

    private void addNames(SpringColumn column) {
        double end = column.middle() - SpringColumn.HALF - 5;
        double top = heights.y(column.measured());
        double base = heights.y(Length.ZERO);
        shapes.add(Label.upTo(end, top - 3, words.say("drawing-spring.nut"), Style.TEXT));
        shapes.add(Label.upTo(end, top + 3, words.say("drawing-spring.washer"), Style.TEXT));
        shapes.add(Label.upTo(end, (top + base) / 2 + 2, words.say("drawing-spring.spring"), Style.TEXT));
        shapes.add(Label.upTo(end, base + 5, words.say("drawing-spring.base"), Style.TEXT));
        shapes.add(Line.of(end + 1, top + 1.2, end + 5, top + 0.6, Style.THIN));
    }

    private Drawing drawing(String id, String key, String note) {
        double bottom = heights.y(Length.ZERO) + SpringColumn.BASE + 4;
        if (!note.isEmpty()) {
            shapes.add(Label.from(3, bottom + 5, words.say("drawing-spring.note." + note), Style.TEXT));
        }
        return new Drawing(
                id,
                words.say(key + ".title"),
                words.say(key + ".description") + heard,
                WIDTH,
                Math.ceil(bottom + (note.isEmpty() ? 2 : 8)),
                heights.scale(),
                TEXT,
                shapes);
    }
}
