package beltmark.core.spring;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.SpringRate;
import java.util.ArrayList;
import java.util.List;

/**
 * A helical compression spring of round wire. It can be made from any dimensions, so that a file with an impossible one
 * can be read and reported; {@link #refusals()} names what is wrong, and every result refuses an impossible spring.
 *
 * @param wire the wire diameter d, above 0
 * @param meanCoil the mean coil diameter D = outside diameter - d, above d
 * @param activeCoils the number of active coils Na, above 0; 3..15 recommended
 * @param ends how the ends are made
 * @param freeLength the length without load L0, above the solid length
 * @param shearModulusMegapascals the modulus of rigidity G in MPa, above 0; 77,200 for chrome-silicon wire
 */
public record CompressionSpring(
        Length wire,
        Length meanCoil,
        double activeCoils,
        SpringEnds ends,
        Length freeLength,
        double shearModulusMegapascals) {

    /** More coils than any spring has; beyond it the number is a slip of the keyboard. */
    static final double MOST_COILS = 1000;

    private static final double LARGEST_MODULUS = 1e6;

    /** {@return everything that makes this spring impossible, in the order in which it is best mended} */
    public List<Refusal> refusals() {
        List<Refusal> refusals = new ArrayList<>();
        boolean modulusKnown = shearModulusMegapascals > 0 && shearModulusMegapascals <= LARGEST_MODULUS;
        if (!isSize(wire) || !isSize(freeLength) || !modulusKnown || activeCoils > MOST_COILS) {
            refusals.add(Refusal.OUT_OF_RANGE);
        }
        if (meanCoil.compareTo(wire) <= 0) {
            refusals.add(Refusal.COIL_NOT_LARGER_THAN_WIRE);
        }
        if (!(activeCoils > 0)) {
            refusals.add(Refusal.NO_ACTIVE_COILS);
        }
        if (refusals.isEmpty() && freeLength.compareTo(solid()) <= 0) {
            refusals.add(Refusal.FREE_NOT_ABOVE_SOLID);
        }
        return refusals;
    }

    /** {@return this spring; throws {@link Refused} with the first of {@link #refusals()} when it is impossible} */
    public CompressionSpring requirePossible() {
        for (Refusal refusal : refusals()) {
            throw Refused.because(refusal)
                    .with("wire", wire)
                    .with("meanCoil", meanCoil)
                    .with("free", freeLength);
        }
        return this;
    }

    /** {@return the spring index C = D/d; 4..12 recommended (Shigley eq. 10-1 and 10-18, seen second-hand)} */
    public double index() {
        requirePossible();
        return meanCoil.millimetres() / wire.millimetres();
    }

    /** {@return the rate k = d^4 G/(8 D^3 Na) (Shigley eq. 10-9, seen second-hand)} */
    public SpringRate rate() {
        requirePossible();
        return CoilRate.plain(wire, meanCoil, activeCoils, shearModulusMegapascals);
    }

    /** {@return the length at which the coils touch, Ls (Shigley table 10-1, seen second-hand)} */
    public Length solidLength() {
        requirePossible();
        return solid();
    }

    /** {@return all coils, Nt = Na + Ne} */
    public double totalCoils() {
        return activeCoils + ends.inactiveCoils();
    }

    /** {@return what setting a blade needs to know of this spring} */
    public WorkingSpring working() {
        return new WorkingSpring(rate(), freeLength, solidLength());
    }

    /**
     * Finds the force of this spring at a coil length L: F = k (L0 - L). The coil length is without the washer.
     *
     * @param coil the length of the coil, from solid to free
     * @return the force, not negative
     * @throws Refused SPRING_LOOSE when longer than free, COIL_BIND when shorter than solid
     */
    public Force forceAt(Length coil) {
        return working().forceAt(coil);
    }

    private static boolean isSize(Length length) {
        return length.nanometres() > 0 && length.millimetres() <= Limits.LARGEST_MILLIMETRES;
    }

    private Length solid() {
        return wire.times(ends.wiresAtSolid(activeCoils));
    }
}
