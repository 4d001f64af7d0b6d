package beltmark.core.spring;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.SpringRate;

/**
 * What setting a blade needs to know of a spring: F = k (L0 - L) between its free and its solid length.
 *
 * @param rate the rate k, above 0
 * @param free the free length L0, above the solid length
 * @param solid the solid length Ls, not negative; 0 when it is not known
 */
public record WorkingSpring(SpringRate rate, Length free, Length solid) {

    private static final double LEAST_OVERRUN = 0.15;

    public WorkingSpring {
        Limits.positive("rate", rate);
        Limits.positive("free", free);
        Limits.notNegative("solid", solid);
        if (free.compareTo(solid) <= 0) {
            throw Refused.because(Refusal.FREE_NOT_ABOVE_SOLID)
                    .with("free", free)
                    .with("solid", solid);
        }
    }

    /**
     * Finds the force at a coil length, without the washer.
     *
     * @throws Refused SPRING_LOOSE when longer than free, COIL_BIND when shorter than solid
     */
    public Force forceAt(Length coil) {
        return rate.force(free.minus(checked(coil)));
    }

    /** {@return the coil length at which it carries a force; SPRING_LOOSE or COIL_BIND when there is none} */
    public Length lengthAt(Force force) {
        return checked(free.minus(rate.change(force)));
    }

    /** {@return the coil length, when it is between solid and free} */
    public Length checked(Length coil) {
        if (coil.compareTo(free) > 0) {
            throw Refused.because(Refusal.SPRING_LOOSE).with("length", coil).with("free", free);
        }
        if (coil.compareTo(solid) < 0) {
            throw Refused.because(Refusal.COIL_BIND).with("length", coil).with("solid", solid);
        }
        return coil;
    }

    /** {@return the change of length from free to solid} */
    public Length mostCompression() {
        return free.minus(solid);
    }

    /**
     * {@return whether less than 15 % of force is left before the coils touch at this coil length (Shigley eq. 10-17 and
     * 10-20, seen second-hand)}
     */
    public boolean isThinAt(Length coil) {
        double compression = free.minus(coil).millimetres();
        return compression > 0 && Limits.isBelow(mostCompression().millimetres() / compression - 1, LEAST_OVERRUN);
    }
}
