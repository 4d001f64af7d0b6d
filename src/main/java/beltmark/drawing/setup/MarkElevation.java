package beltmark.drawing.setup;

import beltmark.core.problem.setup.SetupPart;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Side;
import beltmark.core.setup.Situation;
import beltmark.core.units.Length;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Lane;
import beltmark.drawing.Line;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import beltmark.drawing.TextWidth;
import beltmark.texts.Words;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Both sides of the conveyor with the tensioner mounted: each side's belt mark, the offset, and the mount mark. The belt
 * lies level; the two tapes start at feet of their own, which is why the two belt marks read differently.
 */
final class MarkElevation {

    private static final double EDGE = 1.5;
    private static final double LEFT_COLUMN = 52;
    private static final double RIGHT_COLUMN = 39.5;
    private static final double TO_COLUMN = 1.2;
    private static final double ABOVE_LINE = 1.3;
    private static final double BELOW_LINE = 5;

    private final Situation situation;
    private final Orientation orientation;
    private final Set<SetupPart> told;
    private final Words words;
    private final Elevation sheet;
    private final double labels;
    private final double height;

    MarkElevation(Situation situation, Orientation orientation, Set<SetupPart> told, Words words) {
        this.situation = situation;
        this.orientation = orientation;
        this.told = told;
        this.words = words;
        Reach reach = reach();
        double scale = Elevation.scale(reach);
        double heading = 4 * Elevation.LINE_APART;
        this.sheet = new Elevation(new Heights(heading + reach.high().millimetres() / scale, scale), words);
        this.height = Math.ceil(sheet.heights.y(reach.low()) + 3 * Elevation.LINE_APART);
        this.labels = EDGE + TO_COLUMN + labelWidth();
    }

    Drawing drawing() {
        for (Side side : Side.values()) {
            addSide(side);
        }
        sheet.addNames(column(Side.LEFT), situation);
        sheet.shapes.add(Label.from(EDGE, height - 2, words.say("drawing.scale-note"), Style.TEXT));
        String id = told.contains(SetupPart.MOUNT_MARK) ? "mount-marks-worked" : "mount-marks";
        return new Drawing(
                id,
                words.say("drawing.marks.title"),
                description(),
                2 * labels + LEFT_COLUMN + RIGHT_COLUMN,
                height,
                sheet.heights.scale(),
                Elevation.TEXT,
                sheet.shapes);
    }

    private Reach reach() {
        Reach tensioner = situation.card().reachFromBeltMark(situation.tip(), orientation);
        return new Reach(
                Length.min(tensioner.low(), Length.ZERO),
                Length.max(Length.max(tensioner.high(), offset()), Length.ZERO));
    }

    private Length offset() {
        return situation.card().mountOffset(situation.tip(), orientation);
    }

    private double labelWidth() {
        double names = Math.max(
                TextWidth.of(words.say("drawing.mark.belt-mark"), Elevation.TEXT),
                TextWidth.of(words.say("drawing.mark.mount-mark"), Elevation.TEXT));
        // room for the widest figure there is, so that the width of the sheet tells nothing
        return Math.max(names, TextWidth.ofBold("88 88/88 in", Elevation.TEXT));
    }

    private Column column(Side side) {
        return side == Side.LEFT
                ? new Column(labels, 1, LEFT_COLUMN)
                : new Column(labels + LEFT_COLUMN + RIGHT_COLUMN, -1, RIGHT_COLUMN);
    }

    private void addSide(Side side) {
        Column column = column(side);
        double bottom = height - 1.5 * Elevation.LINE_APART;
        sheet.addPost(column, 2 * Elevation.LINE_APART, bottom);
        sheet.addBelt(column);
        sheet.addTensioner(column, situation, orientation);
        sheet.addMark(column, sheet.zero());
        sheet.shapes.add(Label.centred(
                column.x(Column.TENSIONER_MIDDLE),
                Elevation.LINE_APART - 1,
                words.say("drawing.side." + side.id()),
                Style.STRONG));
        boolean worked = told.contains(SetupPart.MOUNT_MARK);
        Length beltMark = situation.beltMarks().on(side);
        addLevel(side, Length.ZERO, "belt-mark", told.contains(SetupPart.BELT_MARK) ? List.of(beltMark) : List.of());
        addLevel(side, offset(), "mount-mark", worked ? List.of(beltMark.plus(offset())) : List.of());
        if (worked) {
            sheet.shapes.add(offsetDimension(side));
        }
    }

    /** A level line from the tensioner outwards, named and, where told, with its height; clear of the other level. */
    private void addLevel(Side side, Length height, String mark, List<Length> reading) {
        Column column = column(side);
        double y = sheet.heights.y(height);
        double end = column.x(-labels + EDGE);
        sheet.shapes.add(Line.of(column.x(Column.POST_TO), y, end, y, Style.CENTRE));
        boolean isUpper = mark.equals("mount-mark") != offset().isNegative();
        String name = words.say("drawing.mark." + mark);
        double first = isUpper ? y - ABOVE_LINE : y + BELOW_LINE;
        double second = isUpper ? first - Elevation.LINE_APART : first + Elevation.LINE_APART;
        sheet.shapes.add(label(end, isUpper && !reading.isEmpty() ? second : first, name, side, Style.TEXT));
        for (Length told : reading) {
            sheet.shapes.add(label(end, isUpper ? first : second, words.length(told), side, Style.STRONG));
        }
    }

    private static Label label(double end, double y, String text, Side side, Style style) {
        return side == Side.LEFT ? Label.from(end, y, text, style) : Label.upTo(end, y, text, style);
    }

    private Shape offsetDimension(Side side) {
        Column column = column(side);
        // figures stand left of their line: on the right-hand side that is where the tensioner is
        double x = column.x(side == Side.LEFT ? Column.LANE - 1 : 0.5);
        Lane lane = new Lane(x, Elevation.LINE_APART, height, Elevation.TEXT);
        double edge = column.x(Column.TENSIONER_FROM);
        return lane.dimension(
                "offset-" + side.id(),
                offset().abs(),
                words.length(offset()),
                new Lane.End(sheet.zero(), edge),
                new Lane.End(sheet.heights.y(offset()), edge));
    }

    private String description() {
        StringBuilder text = new StringBuilder(words.say(
                "drawing.marks.mounted", Map.of("orientation", words.say("drawing.orientation." + orientation.id()))));
        for (Side side : Side.values()) {
            Map<String, Object> values = Map.of(
                    "side", words.say("drawing.side." + side.id()),
                    "beltMark", situation.beltMarks().on(side),
                    "offset", offset(),
                    "mountMark", situation.beltMarks().on(side).plus(offset()));
            if (told.contains(SetupPart.BELT_MARK)) {
                text.append(' ').append(words.say("drawing.marks.belt-mark", values));
            }
            if (told.contains(SetupPart.MOUNT_MARK)) {
                text.append(' ').append(words.say("drawing.marks.mount-mark", values));
            }
        }
        return text.toString();
    }
}
