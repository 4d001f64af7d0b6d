package beltmark.drawing.spring;

import beltmark.core.units.Length;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Hatch;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Lane;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The sleeve below its bushing: as the card wants it, and once it is told as it shows now. To scale. */
public final class SleeveShowing {

    private static final double TEXT = 5;
    private static final double WIDTH = 120;
    private static final double PAPER = 62;
    private static final double BUSHING_TOP = 6;
    private static final double BUSHING = 20;
    private static final double MIDDLE = 56;
    private static final double SLEEVE_HALF = 7;
    private static final double BUSHING_HALF = 13;
    private static final double LANE = 78;

    private SleeveShowing() {}

    /** {@return the sleeve as set, or as it shows now once that is told} */
    public static Drawing of(Length asSet, Length now, boolean told, Words words) {
        Length drawn = told ? now : asSet;
        double scale = Heights.scaleFor(Length.max(asSet, now), PAPER, 1);
        double top = BUSHING_TOP + BUSHING;
        double end = top + drawn.millimetres() / scale;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Box.between(MIDDLE - SLEEVE_HALF, BUSHING_TOP - 4, MIDDLE + SLEEVE_HALF, end, Style.PART));
        for (int side : new int[] {-1, 1}) {
            Box half = Box.between(
                    MIDDLE + side * SLEEVE_HALF, BUSHING_TOP, MIDDLE + side * BUSHING_HALF, top, Style.SECTION);
            shapes.add(half);
            shapes.add(Hatch.rising(half, 2));
        }
        String id = told ? "sleeve-now" : "sleeve-as-set";
        shapes.add(new Lane(LANE, BUSHING_TOP, end + 4, TEXT)
                .dimension(
                        id,
                        drawn,
                        words.length(drawn),
                        new Lane.End(top, MIDDLE + BUSHING_HALF),
                        new Lane.End(end, MIDDLE + SLEEVE_HALF)));
        double names = MIDDLE - BUSHING_HALF - 4;
        shapes.add(Label.upTo(names, top - 8, words.say("drawing.sleeve.bushing"), Style.TEXT));
        shapes.add(Label.upTo(names, (top + end) / 2 + 2, words.say("drawing.sleeve.sleeve"), Style.TEXT));
        return new Drawing(
                "travel-sleeve" + (told ? "-worked" : ""),
                words.say("drawing-spring.sleeve.title"),
                words.say("drawing-spring.dimension." + id, Map.of("length", drawn)),
                WIDTH,
                Math.ceil(end + 6),
                scale,
                TEXT,
                shapes);
    }
}
