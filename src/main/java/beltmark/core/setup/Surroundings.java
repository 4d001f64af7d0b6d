package beltmark.core.setup;

import beltmark.core.units.Length;
import java.util.List;

/**
 * What limits the space at the place of mounting. All heights are from the belt mark, up positive.
 *
 * @param floor the top of whatever lies below (walkway, deck plate); negative
 * @param roof the underside of whatever lies above (stringer, carrying idlers); positive
 * @param obstacles what stands in the way between the two (pipe, brace, cable tray)
 */
public record Surroundings(Length floor, Length roof, List<Reach> obstacles) {

    public Surroundings {
        obstacles = List.copyOf(obstacles);
    }

    /**
     * Finds the tightest place: the least of the distances to the floor, the roof and each obstacle.
     *
     * @param tensioner the space the tensioner takes up, from the belt mark
     * @return the least gap; negative by how much it does not fit
     */
    public Length leastGap(Reach tensioner) {
        Length least = Length.min(roof.minus(tensioner.high()), tensioner.low().minus(floor));
        for (Reach obstacle : obstacles) {
            least = Length.min(least, tensioner.gapTo(obstacle));
        }
        return least;
    }
}
