package beltmark.core.setup;

import beltmark.core.units.Length;

/**
 * What was measured at the conveyor after a set-up, before the lock came off.
 *
 * @param orientation which way round the tensioners are mounted
 * @param beltMarks the belt marks, above the foot of the tape
 * @param mountMarks the tensioners' datum edges, above the same foot
 * @param springs the spring lengths, from the top of the washer to the top of the base
 * @param sleeves the sleeve showing below the bushing
 */
public record AsLeft(Orientation orientation, Sides beltMarks, Sides mountMarks, Sides springs, Sides sleeves) {

    /** {@return the measure of one kind on both sides} */
    public Sides of(Measure measure) {
        return switch (measure) {
            case BELT_MARK -> beltMarks;
            case MOUNT_MARK -> mountMarks;
            case SPRING -> springs;
            case SLEEVE -> sleeves;
        };
    }

    /** {@return how much higher than asked for the tensioner of one side is mounted, for a given offset} */
    Length mountedHigh(Side side, Length offset) {
        return mountMarks.on(side).minus(beltMarks.on(side).plus(offset));
    }
}
