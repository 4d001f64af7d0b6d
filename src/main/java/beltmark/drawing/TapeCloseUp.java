package beltmark.drawing;

import beltmark.core.setup.Side;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A few inches of a tape, held upright against the steel beside a mark, in the reader's own graduation or in that of
 * a certain tape.
 *
 * @param mark which mark
 * @param side of the conveyor
 * @param height of the mark above the foot of the tape
 */
public record TapeCloseUp(Mark mark, Side side, Length height) {

    private static final double TEXT = 5;
    private static final double WIDTH = 72;
    private static final double SHEET_HEIGHT = 136;
    private static final double TOP = 14;
    private static final double FACE = 114;
    private static final double END = 4;
    private static final double TAPE_LEFT = 3;
    private static final double TAPE_RIGHT = 34;
    private static final double STEEL_RIGHT = 70;
    private static final double NUMBERS = 16.5;
    private static final double MARK_TEXT = 36.5;
    private static final double LANE = 56;
    private static final double LINE_APART = 6;

    /** A mark that is read off a tape. */
    public enum Mark {
        /** The belt line on the steel. */
        BELT("belt-mark"),
        /** Where the tensioner's datum edge goes. */
        MOUNT("mount-mark"),
        /** The plate that a tape stands on, or is held at by another line than its end. */
        FOOT("foot-plate");

        private final String id;

        Mark(String id) {
            this.id = id;
        }

        /** {@return the hyphenated name, part of text keys and of ids in the drawing} */
        public String id() {
            return id;
        }
    }

    /**
     * Draws the tape.
     *
     * @param told whether the reading is told; when not, it stands nowhere in the drawing
     * @param words in whose graduation the tape is printed
     * @return the drawing, about twice as high as wide, so that left and right fit side by side on a phone
     */
    public Drawing drawing(boolean told, Words words) {
        return drawing(told, words.graduation(), words);
    }

    /** {@return the same of a tape that is divided so, whichever the reader is used to} */
    public Drawing drawing(boolean told, Graduation tape, Words words) {
        TapeFace face = new TapeFace(tape);
        Length low = face.numberUnder(height).minus(face.shownBelow());
        Length high = face.numberUnder(height).plus(face.shownAbove());
        double scale = high.minus(low).millimetres() / FACE;
        Heights heights = new Heights(TOP + FACE + low.millimetres() / scale, scale);
        List<Shape> shapes = new ArrayList<>();
        addTape(shapes, face, words);
        addGraduations(shapes, face, heights, low, high);
        if (told) {
            addRest(shapes, face, heights, words);
        }
        addMark(shapes, heights, told ? face.print(height, words) : "", words);
        TapeWords spoken = new TapeWords(this, face, words);
        return new Drawing(
                "tape-" + mark.id + "-" + side.id() + (told ? "-worked" : ""),
                spoken.title(),
                spoken.description(low, high, told),
                WIDTH,
                SHEET_HEIGHT,
                scale,
                TEXT,
                shapes);
    }

    private void addTape(List<Shape> shapes, TapeFace face, Words words) {
        double top = TOP - END;
        double bottom = TOP + FACE + END;
        shapes.add(Label.from(MARK_TEXT, LINE_APART, words.say("drawing.side." + side.id()), Style.STRONG));
        shapes.add(Label.from(
                TAPE_LEFT,
                LINE_APART,
                words.say("drawing.tape.unit." + face.graduation().unit().symbol()),
                Style.TEXT));
        shapes.add(Box.between(TAPE_RIGHT - 2, top + 2, STEEL_RIGHT, bottom - 2, Style.STEEL));
        shapes.add(Box.between(TAPE_LEFT, top, TAPE_RIGHT, bottom, Style.TAPE));
    }

    private static void addGraduations(List<Shape> shapes, TapeFace face, Heights heights, Length low, Length high) {
        Length step = face.graduation().step();
        for (Length at = low; at.compareTo(high) <= 0; at = at.plus(step)) {
            double y = heights.y(at);
            shapes.add(Line.of(TAPE_RIGHT - face.tick(at), y, TAPE_RIGHT, y, Style.GRADUATION));
            if (face.isNumbered(at)) {
                shapes.add(Label.upTo(NUMBERS, y + TEXT * 0.36, face.number(at), Style.NUMBER));
            }
        }
    }

    private void addMark(List<Shape> shapes, Heights heights, String reading, Words words) {
        double y = heights.y(height);
        shapes.add(Line.of(TAPE_RIGHT, y, STEEL_RIGHT - 2, y, Style.MARK));
        double baseline = y - 2;
        if (!reading.isEmpty()) {
            shapes.add(Label.from(MARK_TEXT, baseline, reading, Style.STRONG));
            baseline -= LINE_APART;
        }
        List<String> lines = TextWidth.wrap(words.say("drawing.mark." + mark.id), TEXT, STEEL_RIGHT - MARK_TEXT);
        for (int i = lines.size() - 1; i >= 0; i--) {
            shapes.add(Label.from(MARK_TEXT, baseline, lines.get(i), Style.TEXT));
            baseline -= LINE_APART;
        }
    }

    /** Dimensions what the mark lies above the number under it. */
    private void addRest(List<Shape> shapes, TapeFace face, Heights heights, Words words) {
        Length number = face.numberUnder(height);
        Length rest = height.minus(number);
        if (!rest.equals(Length.ZERO)) {
            double y = heights.y(height);
            Lane lane = new Lane(LANE, TOP, TOP + FACE, TEXT);
            lane.keepOff(y - 4 * LINE_APART, y);
            shapes.add(lane.dimension(
                    "rest-" + side.id(),
                    rest,
                    face.print(rest, words),
                    new Lane.End(y, TAPE_RIGHT),
                    new Lane.End(heights.y(number), TAPE_RIGHT)));
        }
    }
}
