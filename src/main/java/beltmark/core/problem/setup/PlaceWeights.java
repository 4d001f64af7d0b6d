package beltmark.core.problem.setup;

import java.util.List;

/**
 * How often each kind of place is drawn, in proportion.
 *
 * @param asDelivered for {@link Place#AS_DELIVERED}
 * @param turnedOver for {@link Place#TURNED_OVER}
 * @param nothingFits for {@link Place#NOTHING_FITS}; 0 in families that go on after the orientation
 */
public record PlaceWeights(int asDelivered, int turnedOver, int nothingFits) {

    public PlaceWeights {
        if (Math.min(asDelivered, Math.min(turnedOver, nothingFits)) < 0
                || asDelivered + turnedOver + nothingFits < 1) {
            throw new IllegalArgumentException("weights must not be negative, and one must be above 0");
        }
    }

    List<Integer> inOrder() {
        return List.of(asDelivered, turnedOver, nothingFits);
    }
}
