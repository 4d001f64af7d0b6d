package beltmark.core.spring;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Pressure;
import beltmark.core.units.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * Whether a spring buckles. A steel spring does not when L0 &lt; 2.63 D/alpha; otherwise it does at the deflection y_cr = L0
 * C1 [1 - sqrt(1 - C2/lambda^2)] with lambda = alpha L0/D, C1 = E/(2 (E - G)), C2 = 2 pi^2 (E - G)/(2 G + E). Source:
 * Shigley's Mechanical Engineering Design, eq. 10-10 to 10-13 and table 10-2 (seen second-hand).
 *
 * @param slenderness lambda
 * @param criticalFree the free length below which a steel spring does not buckle, 2.63 D/alpha
 * @param criticalDeflection the deflection at which it buckles; null when it never does
 */
public record Buckling(
        Ratio slenderness, Length criticalFree, @Nullable Length criticalDeflection) {

    private static final double STEEL = 2.63;
    private static final double LEAST_END_CONSTANT = 0.5;
    private static final double LARGEST_END_CONSTANT = 2;

    /** Young's modulus and the modulus of rigidity of the wire, E above G. */
    public record Moduli(Pressure young, Pressure shear) {

        /** Steel: E 207 GPa (from memory), G 79.3 GPa (from memory); with them 2.63 is the square root of C2. */
        public static final Moduli STEEL = new Moduli(new Pressure(207_000), new Pressure(79_300));

        public Moduli {
            Limits.positive("shearModulus", shear);
            Limits.within("youngModulus", young, Math.nextUp(shear.megapascals()), Limits.LARGEST);
        }

        private double c1() {
            return young.megapascals() / (2 * difference());
        }

        private double c2() {
            return 2 * Math.PI * Math.PI * difference() / (2 * shear.megapascals() + young.megapascals());
        }

        private double difference() {
            return young.megapascals() - shear.megapascals();
        }
    }

    /**
     * Judges a spring.
     *
     * @param free the free length L0, above 0
     * @param meanCoil the mean coil diameter D, above 0
     * @param endConstant alpha: 0.5 between flat seats, 0.707 one seat hinged, 1 both hinged, 2 one end free
     * @param moduli of the wire
     * @return the verdict; with MAY_BUCKLE where L0 is not below the critical length
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Buckling> of(Length free, Length meanCoil, double endConstant, Moduli moduli) {
        Limits.positive("free", free);
        Limits.positive("meanCoil", meanCoil);
        Limits.within("endConstant", endConstant, LEAST_END_CONSTANT, LARGEST_END_CONSTANT);
        Ratio slenderness = new Ratio(endConstant * free.millimetres() / meanCoil.millimetres());
        Length critical = Length.ofMillimetres(STEEL * meanCoil.millimetres() / endConstant);
        Buckling buckling = new Buckling(slenderness, critical, criticalDeflection(free, slenderness, moduli));
        return Solution.of(
                        buckling,
                        Step.of("buckling-slenderness", "free", free)
                                .with("meanCoil", meanCoil)
                                .with("endConstant", new Ratio(endConstant))
                                .with("slenderness", slenderness),
                        Step.of("buckling-critical-free", "meanCoil", meanCoil)
                                .with("endConstant", new Ratio(endConstant))
                                .with("criticalFree", critical))
                .warnIf(free.compareTo(critical) >= 0, Warning.MAY_BUCKLE);
    }

    private static @Nullable Length criticalDeflection(Length free, Ratio slenderness, Moduli moduli) {
        double inside = 1 - moduli.c2() / (slenderness.value() * slenderness.value());
        return inside < 0 ? null : free.times(moduli.c1() * (1 - Math.sqrt(inside)));
    }
}
