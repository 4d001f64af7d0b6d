package beltmark.core.setup;

import beltmark.core.units.Length;

/**
 * The vertical space that something takes up, from its lowest to its highest point, both measured from the same mark,
 * up positive.
 *
 * @param low the lowest point
 * @param high the highest point, not below {@code low}
 */
public record Reach(Length low, Length high) {

    public Reach {
        if (high.compareTo(low) < 0) {
            throw new IllegalArgumentException("reach from " + low + " up to " + high + " is upside down");
        }
    }

    /** {@return this reach moved up by a length} */
    public Reach movedUp(Length up) {
        return new Reach(low.plus(up), high.plus(up));
    }

    /**
     * {@return the gap to another reach; negative when they overlap, by how much this one would have to move the
     * shorter way to come free}
     */
    public Length gapTo(Reach other) {
        return Length.max(other.low.minus(high), low.minus(other.high));
    }
}
