package beltmark.core.blade;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Force;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Ratio;

/**
 * The load of a blade on the belt from the lengths of its springs. With brackets square to the belt N = k (L0 - L_L) + k
 * (L0 - L_R) - m g cos(theta), and the line load is q = N/b. With plumb brackets on a sloping belt the guides are vertical
 * and the drag of the belt mu N has a part along them: N = (F_L + F_R - m g)/(cos(theta) + mu sin(theta)) when the return
 * belt runs down the slope, with minus when it runs up. Own derivation. Neglected: friction in the guides, sag of the
 * belt, bending of the pole.
 *
 * @param left the force of the left spring F_L
 * @param right the force of the right spring F_R
 * @param load the force of the blade on the belt N, above 0
 * @param lineLoad the load per length of blade q, if it were even
 */
public record BladeLoad(Force left, Force right, Force load, LineLoad lineLoad) {

    /** Which way the return belt runs at the cleaner. */
    public enum ReturnRun {
        /** Down the slope: a conveyor that carries up. */
        DOWN_SLOPE,
        /** Up the slope. */
        UP_SLOPE
    }

    /**
     * Finds the load with brackets square to the belt.
     *
     * @param spring the spring on each side
     * @param lengths how they are set
     * @param assembly what they carry
     * @return the load; with THIN_OVERRUN when a spring has less than 15 % of force left
     * @throws Refused SPRING_LOOSE, COIL_BIND, NO_CONTACT, OUT_OF_RANGE
     */
    public static Solution<BladeLoad> square(WorkingSpring spring, SpringLengths lengths, Assembly assembly) {
        Force left = spring.forceAt(lengths.leftCoil());
        Force right = spring.forceAt(lengths.rightCoil());
        Force across = assembly.weightAcross();
        Force load = pressing(left.plus(right).minus(across));
        Step step = Step.of("blade-load", "left", left)
                .with("right", right)
                .with("weightAcross", across)
                .with("load", load);
        return solved(spring, lengths, assembly, new BladeLoad(left, right, load, lineLoad(load, assembly)), step);
    }

    /**
     * Finds the load with plumb brackets on a sloping belt.
     *
     * @param friction of the blade on the belt mu, not negative
     * @param run which way the return belt runs; a slope of 0 or more is meant
     * @return the load; with THIN_OVERRUN when a spring has less than 15 % of force left
     * @throws Refused JAM when drag along the guides outweighs the rest; SPRING_LOOSE, COIL_BIND, NO_CONTACT, OUT_OF_RANGE
     */
    public static Solution<BladeLoad> plumb(
            WorkingSpring spring, SpringLengths lengths, Assembly assembly, Ratio friction, ReturnRun run) {
        Force left = spring.forceAt(lengths.leftCoil());
        Force right = spring.forceAt(lengths.rightCoil());
        Force upwards = pressing(left.plus(right).minus(assembly.moving().weight()));
        Ratio share = new Ratio(alongGuide(assembly, Drag.checked(friction), run));
        Force load = upwards.times(1 / share.value());
        Step step = Step.of("blade-load-plumb", "left", left)
                .with("right", right)
                .with("weight", assembly.moving().weight())
                .with("share", share)
                .with("load", load);
        return solved(spring, lengths, assembly, new BladeLoad(left, right, load, lineLoad(load, assembly)), step);
    }

    private static double alongGuide(Assembly assembly, Ratio friction, ReturnRun run) {
        double drag = friction.value() * assembly.slope().sin();
        double share = assembly.slope().cos() + (run == ReturnRun.DOWN_SLOPE ? drag : -drag);
        if (share <= 0) {
            throw Refused.because(Refusal.JAM).with("slope", assembly.slope()).with("friction", friction);
        }
        return share;
    }

    /** {@return the force, when the blade presses at all} */
    static Force pressing(Force load) {
        if (load.newtons() <= 0) {
            throw Refused.because(Refusal.NO_CONTACT).with("load", load);
        }
        return load;
    }

    private static LineLoad lineLoad(Force load, Assembly assembly) {
        return LineLoad.of(load, assembly.blade());
    }

    private static Solution<BladeLoad> solved(
            WorkingSpring spring, SpringLengths lengths, Assembly assembly, BladeLoad load, Step loadStep) {
        boolean thin = spring.isThinAt(lengths.leftCoil()) || spring.isThinAt(lengths.rightCoil());
        return Solution.of(
                        load,
                        lengths.step(),
                        Step.of("spring-forces", "rate", spring.rate())
                                .with("free", spring.free())
                                .with("left", load.left)
                                .with("right", load.right),
                        loadStep,
                        Step.of("line-load", "load", load.load)
                                .with("blade", assembly.blade())
                                .with("lineLoad", load.lineLoad))
                .warnIf(thin, Warning.THIN_OVERRUN);
    }
}
