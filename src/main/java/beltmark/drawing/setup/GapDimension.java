package beltmark.drawing.setup;

import beltmark.core.setup.Orientation;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.units.Length;
import beltmark.drawing.Dimension;
import beltmark.drawing.Lane;
import beltmark.texts.Words;

/** The tightest place of one way of mounting: the gap there, or by how much the tensioner runs into something. */
final class GapDimension {

    private final Situation situation;
    private final Orientation orientation;
    private final Elevation sheet;
    private final Reach tensioner;

    GapDimension(Situation situation, Orientation orientation, Elevation sheet) {
        this.situation = situation;
        this.orientation = orientation;
        this.sheet = sheet;
        this.tensioner = situation.card().reachFromBeltMark(situation.tip(), orientation);
    }

    /** From an edge of the tensioner to an edge of what is nearest. */
    private record Edges(Length tensioner, Length other, Length gap) {}

    Dimension dimension(Column column, double bottom, Words words) {
        Surroundings place = situation.surroundings();
        Lane lane = new Lane(column.x(Column.LANE), sheet.heights.y(place.roof()), bottom, Elevation.TEXT);
        lane.keepOff(sheet.zero());
        place.obstacles().forEach(other -> lane.keepOff(sheet.heights.y(other.low()), sheet.heights.y(other.high())));
        Edges edges = tightest();
        double edge = column.x(Column.TENSIONER_FROM);
        return lane.dimension(
                "gap-" + orientation.id(),
                edges.gap.abs(),
                words.length(edges.gap.abs()),
                new Lane.End(sheet.heights.y(edges.tensioner), edge),
                new Lane.End(sheet.heights.y(edges.other), edge));
    }

    private Edges tightest() {
        Surroundings place = situation.surroundings();
        Edges tightest = tighter(above(place.roof()), below(place.floor()));
        for (Reach obstacle : place.obstacles()) {
            Edges above = above(obstacle.low());
            Edges below = below(obstacle.high());
            tightest = tighter(tightest, above.gap.compareTo(below.gap) >= 0 ? above : below);
        }
        return tightest;
    }

    private Edges above(Length lowEdge) {
        return new Edges(tensioner.high(), lowEdge, lowEdge.minus(tensioner.high()));
    }

    private Edges below(Length highEdge) {
        return new Edges(tensioner.low(), highEdge, tensioner.low().minus(highEdge));
    }

    private static Edges tighter(Edges one, Edges other) {
        return other.gap.compareTo(one.gap) < 0 ? other : one;
    }
}
