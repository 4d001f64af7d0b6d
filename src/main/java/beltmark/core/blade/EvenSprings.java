package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;

/**
 * The forces of the two springs that press a blade evenly although it is not midway between them: F_R = W/2 + N (1/2 +
 * e/S), F_L = W/2 + N (1/2 - e/S), with e towards the right. Own derivation.
 *
 * @param left the force of the left spring
 * @param right the force of the right spring
 */
public record EvenSprings(Force left, Force right) {

    /**
     * Finds the forces.
     *
     * @param load of the blade on the belt N, above 0
     * @param weightAcross the part of the weight square to the belt W, not negative
     * @param span between the springs S, above 0
     * @param blade the length of the blade b, above 0
     * @param bladeOffCentre how far right of the middle between the springs the blade is e
     * @throws Refused BLADE_OFF_ITS_SPAN when |e| + b/2 exceeds S/2, OUT_OF_RANGE
     */
    public static Solution<EvenSprings> of(
            Force load, Force weightAcross, Length span, Length blade, Length bladeOffCentre) {
        Limits.positive("load", load);
        Limits.notNegative("weight", weightAcross);
        EdgeLoads.Layout layout = new EdgeLoads.Layout(span, blade, bladeOffCentre, Length.ZERO);
        double share = layout.bladeOffCentre().millimetres() / span.millimetres();
        Force half = weightAcross.times(0.5);
        EvenSprings springs = new EvenSprings(half.plus(load.times(0.5 - share)), half.plus(load.times(0.5 + share)));
        return Solution.of(
                springs,
                Step.of("even-springs", "load", load)
                        .with("weightAcross", weightAcross)
                        .with("bladeOffCentre", bladeOffCentre)
                        .with("span", span)
                        .with("left", springs.left)
                        .with("right", springs.right));
    }
}
