package beltmark.core.problem;

import beltmark.core.units.Length;

/**
 * The lengths that may be drawn: from the first in equal steps up to the last.
 *
 * @param from the first
 * @param to the last; not below the first
 * @param step the distance between two, above 0
 */
public record LengthRange(Length from, Length to, Length step) {

    public LengthRange {
        if (step.nanometres() <= 0 || to.compareTo(from) < 0) {
            throw new IllegalArgumentException("no range from " + from + " to " + to + " in steps of " + step);
        }
    }

    /** {@return how many lengths there are} */
    public int steps() {
        return Math.toIntExact(to.minus(from).nanometres() / step.nanometres() + 1);
    }

    /** {@return the length at an index, 0 being the first} */
    public Length at(int index) {
        return from.plus(Length.ofNanometres(step.nanometres() * index));
    }
}
