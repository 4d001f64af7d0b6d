package beltmark.drawing.conveyor;

import beltmark.core.lockout.Spot;
import beltmark.drawing.Drawing;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Draws the conveyor of a question: belt, pulleys and steel always, everything else only where the question offers it.
 * Sizes are to scale with each other as far as a part that must be tapped on a phone can be.
 */
public final class ConveyorScene {

    private static final double WIDTH = 112;
    private static final double HEIGHT = 96;
    private static final double SCALE = 100;
    private static final double TEXT = 4;

    /** Where the number of each spot stands: beside the part, on empty paper. */
    private static final Map<Spot, Point> PLACES = new EnumMap<>(Map.ofEntries(
            Map.entry(Spot.HEAD_DRIVE, new Point(104.5, 34)),
            Map.entry(Spot.HEAD_DISCONNECT, new Point(106, 74)),
            Map.entry(Spot.TAIL_DRIVE, new Point(5, 46)),
            Map.entry(Spot.TAIL_DISCONNECT, new Point(5, 67)),
            Map.entry(Spot.CAPACITORS, new Point(90, 65)),
            Map.entry(Spot.TAKE_UP_WEIGHT, new Point(50, 79)),
            Map.entry(Spot.TAKE_UP_PIN, new Point(62, 76.5)),
            Map.entry(Spot.AIR_RECEIVER, new Point(12, 86)),
            Map.entry(Spot.AIR_VALVE, new Point(31, 76)),
            Map.entry(Spot.CLEANER_SPRINGS, new Point(84, 53)),
            Map.entry(Spot.PUSH_BUTTONS, new Point(74, 62)),
            Map.entry(Spot.PULL_CORD, new Point(30, 24)),
            Map.entry(Spot.SELECTOR, new Point(30, 62)),
            Map.entry(Spot.LOAD, new Point(55, 22)),
            Map.entry(Spot.HORN, new Point(10, 25)),
            Map.entry(Spot.BELT_CLAMP, new Point(76, 19))));

    private ConveyorScene() {}

    /**
     * Draws it.
     *
     * @param offered the spots of the question, the first with number 1
     * @param words the language of the description
     * @return the drawing with its numbers
     */
    public static Scene of(List<Spot> offered, Words words) {
        List<Shape> shapes = new ArrayList<>(ConveyorParts.always());
        offered.forEach(spot -> shapes.addAll(ConveyorParts.of(spot)));
        List<Scene.SpotMark> marks = new ArrayList<>();
        for (Spot spot : offered) {
            Point place = PLACES.get(spot);
            if (place == null) {
                throw new IllegalStateException(spot + " has no place on the drawing");
            }
            marks.add(new Scene.SpotMark(marks.size() + 1, place));
        }
        Drawing drawing = new Drawing(
                "conveyor",
                words.say("lockout.scene.title"),
                words.say("lockout.scene.description"),
                WIDTH,
                HEIGHT,
                SCALE,
                TEXT,
                shapes);
        return new Scene(drawing, marks);
    }
}
