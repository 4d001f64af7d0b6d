package beltmark.drawing.setup;

import beltmark.core.setup.Reach;
import beltmark.core.setup.Surroundings;
import beltmark.core.units.Length;
import beltmark.drawing.Lane;
import beltmark.drawing.Shape;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * The dimensions a problem gives of the surroundings, all from the belt mark, in lanes left of the drawing: the nearest
 * edge in the lane nearest to the drawing, so that no dimension line is crossed.
 */
final class GivenHeights {

    private static final double FIRST_LANE = 7.5;
    private static final double LANE_APART = 7.4;
    private static final double TO_DRAWING = 4.5;
    private static final double TOP = 1;

    private final Surroundings place;
    private final Elevation sheet;
    private final double bottom;

    GivenHeights(Surroundings place, Elevation sheet, double bottom) {
        this.place = place;
        this.sheet = sheet;
        this.bottom = bottom;
    }

    /** One lane: what is dimensioned in it. */
    private record Measured(String id, Length height) {}

    /** {@return how much of the sheet the lanes take up} */
    double width() {
        return FIRST_LANE + (lanes().size() - 1) * LANE_APART + TO_DRAWING;
    }

    List<Shape> dimensions(Words words) {
        List<Shape> dimensions = new ArrayList<>();
        List<List<Measured>> lanes = lanes();
        for (int i = 0; i < lanes.size(); i++) {
            for (Measured one : lanes.get(i)) {
                Lane lane = new Lane(FIRST_LANE + i * LANE_APART, TOP, bottom, Elevation.TEXT);
                lanes.subList(0, i)
                        .forEach(outer -> outer.forEach(other -> lane.keepOff(sheet.heights.y(other.height))));
                // a figure on the line of another dimension would be taken for that one's
                lanes.get(i).stream()
                        .filter(other -> !other.equals(one))
                        .forEach(other -> lane.keepOff(sheet.zero(), sheet.heights.y(other.height)));
                dimensions.add(dimension(lane, one, words));
            }
        }
        return dimensions;
    }

    private Shape dimension(Lane lane, Measured one, Words words) {
        Lane.End mark = new Lane.End(sheet.zero(), width());
        Lane.End edge = new Lane.End(sheet.heights.y(one.height), width());
        Length length = one.height.abs();
        return lane.dimension(one.id, length, words.length(length), mark, edge);
    }

    /** {@return the lanes from the left} */
    private List<List<Measured>> lanes() {
        List<List<Measured>> lanes = new ArrayList<>();
        lanes.add(List.of(new Measured("roof", place.roof()), new Measured("floor", place.floor())));
        for (int i = place.obstacles().size() - 1; i >= 0; i--) {
            Reach obstacle = place.obstacles().get(i);
            boolean above = obstacle.low().compareTo(Length.ZERO) >= 0;
            String id = above ? "obstacle-above" : "obstacle-below";
            lanes.add(List.of(new Measured(id + "-to", above ? obstacle.high() : obstacle.low())));
            lanes.add(List.of(new Measured(id + "-from", above ? obstacle.low() : obstacle.high())));
        }
        return lanes;
    }
}
