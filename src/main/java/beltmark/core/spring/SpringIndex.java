package beltmark.core.spring;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/**
 * How stout a spring is wound: C = D/d, with the wire diameter d and the mean coil diameter D = outside diameter - d.
 * Source: Shigley's Mechanical Engineering Design, eq. 10-1 and 10-18 (seen second-hand).
 */
public final class SpringIndex {

    private static final double LEAST = 4;
    private static final double MOST = 12;

    private SpringIndex() {}

    /**
     * Finds the index.
     *
     * @param wire the wire diameter d, above 0
     * @param meanCoil the mean coil diameter D, above d
     * @return C, above 1; with INDEX_OUTSIDE_4_TO_12 where it applies
     * @throws Refused COIL_NOT_LARGER_THAN_WIRE, OUT_OF_RANGE
     */
    public static Solution<Ratio> of(Length wire, Length meanCoil) {
        Ratio index = new Ratio(checked(wire, meanCoil));
        return Solution.of(
                        index,
                        Step.of("spring-index", "wire", wire)
                                .with("meanCoil", meanCoil)
                                .with("index", index))
                .warnIf(isDoubtful(index.value()), Warning.INDEX_OUTSIDE_4_TO_12);
    }

    /** {@return C, or a refusal} */
    static double checked(Length wire, Length meanCoil) {
        Limits.positive("wire", wire);
        Limits.positive("meanCoil", meanCoil);
        if (meanCoil.compareTo(wire) <= 0) {
            throw Refused.because(Refusal.COIL_NOT_LARGER_THAN_WIRE)
                    .with("wire", wire)
                    .with("meanCoil", meanCoil);
        }
        return meanCoil.millimetres() / wire.millimetres();
    }

    /** {@return whether an index is outside what is recommended} */
    static boolean isDoubtful(double index) {
        return Limits.isOutside(index, LEAST, MOST);
    }
}
