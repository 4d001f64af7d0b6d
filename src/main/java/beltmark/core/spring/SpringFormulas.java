package beltmark.core.spring;

import beltmark.core.units.Length;
import beltmark.core.units.SpringRate;

/** The formulas that several classes of this package share; callers have checked the ranges. */
final class SpringFormulas {

    private SpringFormulas() {}

    /** {@return k = d^4 G/(8 D^3 Na)} */
    static SpringRate rate(Length wire, Length meanCoil, double activeCoils, double shearModulusMegapascals) {
        double d = wire.millimetres();
        double coil = meanCoil.millimetres();
        return new SpringRate(d * d * d * d * shearModulusMegapascals / (8 * coil * coil * coil * activeCoils));
    }
}
