package beltmark.core.blade;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.LineLoad;
import beltmark.core.units.PreciseLength;

/**
 * The line load at each end of a blade whose load does not act at its middle. The blade is a stiff beam on an even belt:
 * while the eccentricity ecc is within b/6, q_end = (N/b)(1 +- 6 ecc/b); beyond it the load is a triangle of width 3 (b/2 -
 * |ecc|) with the peak 2 N/width and the other end lifts. The middle-third rule is from memory (texts on footings) and
 * was checked numerically; the centre of pressure is statics, own derivation.
 *
 * @param eccentricity how far right of the middle of the blade the load acts; negative to the left
 * @param left the line load at the left end
 * @param right the line load at the right end
 * @param contact how much of the blade touches the belt
 */
public record EdgeLoads(PreciseLength eccentricity, LineLoad left, LineLoad right, PreciseLength contact) {

    private static final double MIDDLE_THIRD = 6;

    /**
     * Where the springs and the blade are across the belt; right is positive, all from the middle between the springs.
     *
     * @param span between the springs S, above 0
     * @param blade the length of the blade b, above 0
     * @param bladeOffCentre of the middle of the blade e
     * @param weightOffCentre of the centre of gravity y_cg
     */
    public record Layout(Length span, Length blade, Length bladeOffCentre, Length weightOffCentre) {

        public Layout {
            Limits.positive("span", span);
            Limits.positive("blade", blade);
            Limits.signed("bladeOffCentre", bladeOffCentre);
            Limits.signed("weightOffCentre", weightOffCentre);
            if (bladeOffCentre.abs().times(2).plus(blade).compareTo(span) > 0) {
                throw Refused.because(Refusal.BLADE_OFF_ITS_SPAN)
                        .with("blade", blade)
                        .with("span", span)
                        .with("bladeOffCentre", bladeOffCentre);
            }
        }
    }

    /**
     * Finds the line loads from where the load acts.
     *
     * @param load of the blade on the belt N, above 0
     * @param eccentricity how far right of the middle of the blade it acts
     * @param blade the length of the blade b, above 0
     * @return both ends; with EDGE_LIFTS outside the middle third
     * @throws Refused TIPS_OVER when the load acts beyond an end, OUT_OF_RANGE
     */
    public static Solution<EdgeLoads> of(Force load, PreciseLength eccentricity, Length blade) {
        Limits.positive("load", load);
        Limits.positive("blade", blade);
        double size = Math.abs(eccentricity.millimetres());
        double length = blade.millimetres();
        if (size >= length / 2) {
            throw Refused.because(Refusal.TIPS_OVER)
                    .with("eccentricity", eccentricity)
                    .with("blade", blade);
        }
        boolean lifts = Limits.isAbove(size, length / MIDDLE_THIRD);
        double contact = lifts ? 3 * (length / 2 - size) : length;
        double even = load.newtons() / length;
        double heavy = lifts ? 2 * load.newtons() / contact : even * (1 + MIDDLE_THIRD * size / length);
        double light = lifts ? 0 : Math.max(0, even * (1 - MIDDLE_THIRD * size / length));
        boolean right = eccentricity.millimetres() > 0;
        return solved(
                        new EdgeLoads(
                                eccentricity,
                                new LineLoad(right ? light : heavy),
                                new LineLoad(right ? heavy : light),
                                new PreciseLength(contact)),
                        load,
                        blade)
                .warnIf(lifts, Warning.EDGE_LIFTS);
    }

    /**
     * Finds the line loads from the forces of the springs: the load acts at y_p = [(F_R - F_L) S/2 - W y_cg]/N, N = F_L +
     * F_R - W.
     *
     * @param left the force of the left spring F_L, not negative
     * @param right the force of the right spring F_R, not negative
     * @param weightAcross the part of the weight square to the belt W, not negative
     * @param layout where everything is
     * @return both ends; with EDGE_LIFTS outside the middle third
     * @throws Refused NO_CONTACT, TIPS_OVER, OUT_OF_RANGE
     */
    public static Solution<EdgeLoads> fromSprings(Force left, Force right, Force weightAcross, Layout layout) {
        Limits.notNegative("leftForce", left);
        Limits.notNegative("rightForce", right);
        Limits.notNegative("weight", weightAcross);
        Force load = BladeLoad.pressing(left.plus(right).minus(weightAcross));
        PreciseLength centre = centreOfPressure(left, right, weightAcross, layout);
        PreciseLength eccentricity = new PreciseLength(centre.millimetres() - layout.bladeOffCentre.millimetres());
        Step step = Step.of("centre-of-pressure", "left", left)
                .with("right", right)
                .with("span", layout.span)
                .with("load", load)
                .with("centre", centre)
                .with("bladeOffCentre", layout.bladeOffCentre)
                .with("eccentricity", eccentricity);
        return of(load, eccentricity, layout.blade).after(Solution.of(centre, step));
    }

    /**
     * Finds how far right of the middle between the springs the load acts, y_p = [(F_R - F_L) S/2 - W y_cg]/N. It may lie
     * beyond the blade.
     *
     * @throws Refused NO_CONTACT when the springs do not carry the weight
     */
    public static PreciseLength centreOfPressure(Force left, Force right, Force weightAcross, Layout layout) {
        Force load = BladeLoad.pressing(left.plus(right).minus(weightAcross));
        double moment = right.minus(left).newtons() * layout.span.millimetres() / 2
                - weightAcross.newtons() * layout.weightOffCentre.millimetres();
        return new PreciseLength(moment / load.newtons());
    }

    private static Solution<EdgeLoads> solved(EdgeLoads ends, Force load, Length blade) {
        return Solution.of(
                ends,
                Step.of("edge-line-loads", "load", load)
                        .with("blade", blade)
                        .with("eccentricity", ends.eccentricity)
                        .with("left", ends.left)
                        .with("right", ends.right));
    }
}
