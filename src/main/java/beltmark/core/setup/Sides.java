package beltmark.core.setup;

import beltmark.core.units.Length;

/**
 * One length for each side of the conveyor, left and right as seen looking along the belt travel.
 *
 * @param left on the left side
 * @param right on the right side
 */
public record Sides(Length left, Length right) {

    /** {@return the same length on both sides} */
    public static Sides both(Length length) {
        return new Sides(length, length);
    }

    /** {@return the length on one side} */
    public Length on(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** {@return both sides moved up by the same amount} */
    public Sides plus(Length up) {
        return new Sides(left.plus(up), right.plus(up));
    }
}
