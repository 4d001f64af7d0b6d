package beltmark.drawing.setup;

import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.units.Length;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Shape;
import beltmark.drawing.Style;
import java.util.ArrayList;
import java.util.List;

/** How one way of mounting comes off in the choice; told by a word and a sign, never by colour alone. */
enum Fit {
    /** This way it is mounted. */
    CHOSEN("chosen"),
    /** It would fit this way too, but the other way comes first. */
    NOT_NEEDED("not-needed"),
    /** There is room, but less than the clearance. */
    TOO_CLOSE("too-close"),
    /** Something is where the tensioner would be. */
    BLOCKED("blocked");

    private static final double HALF = 1.5;

    private final String id;

    Fit(String id) {
        this.id = id;
    }

    static Fit of(OrientationChoice choice, Orientation orientation) {
        if (choice.chosen().filter(orientation::equals).isPresent()) {
            return CHOSEN;
        }
        if (choice.fits(orientation)) {
            return NOT_NEEDED;
        }
        return choice.gap(orientation).compareTo(Length.ZERO) < 0 ? BLOCKED : TOO_CLOSE;
    }

    String id() {
        return id;
    }

    /** {@return a tick, a dash or a cross with its middle at a place} */
    List<Shape> sign(double x, double y) {
        return switch (this) {
            case CHOSEN -> List.of(sign(x - HALF, y, x - HALF / 3, y + HALF, x + HALF, y - HALF));
            case NOT_NEEDED -> List.of(sign(x - HALF, y, x + HALF, y));
            case TOO_CLOSE, BLOCKED ->
                List.of(sign(x - HALF, y - HALF, x + HALF, y + HALF), sign(x - HALF, y + HALF, x + HALF, y - HALF));
        };
    }

    private static Outline sign(double... xAndY) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xAndY.length; i += 2) {
            points.add(new Point(xAndY[i], xAndY[i + 1]));
        }
        return new Outline(points, false, Style.SIGN);
    }
}
