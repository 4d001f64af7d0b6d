package beltmark.core.blade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.core.blade.Bounce.Swing;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Angle;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Speed;
import beltmark.core.units.SpringRate;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** Compares closed forms with root finding, quadrature and integration by Commons Math. */
class AgainstCommonsMathTest {

    private static SplittableRandom random(RepetitionInfo repetition) {
        return new SplittableRandom(1000 + repetition.getCurrentRepetition());
    }

    private static double between(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    @RepeatedTest(50)
    void settingIsTheRootOfTheLoad(RepetitionInfo repetition) {
        SplittableRandom random = random(repetition);
        WorkingSpring spring = new WorkingSpring(
                new SpringRate(between(random, 25, 45)), Length.ofMillimetres(120), Length.ofMillimetres(30));
        Assembly assembly = new Assembly(
                new Mass(between(random, 15, 60)),
                new Angle(between(random, -18, 18)),
                Length.ofMillimetres(between(random, 400, 2000)));
        double wanted = between(random, 0.3, 0.8);
        double root =
                new BrentSolver(1e-10).solve(200, length -> lineLoad(spring, assembly, length) - wanted, 30, 119.999);
        SettingForLoad setting = SettingForLoad.of(new LineLoad(wanted), spring, Length.ZERO, assembly)
                .result();
        assertEquals(root, setting.coil().millimetres(), 2e-6);
    }

    /** The load without the refusals, so that the root finder may look on both sides. */
    private static double lineLoad(WorkingSpring spring, Assembly assembly, double length) {
        double force = spring.forceAt(Length.ofMillimetres(length)).newtons();
        return (2 * force - assembly.weightAcross().newtons())
                / assembly.blade().millimetres();
    }

    @RepeatedTest(50)
    void bounceIsTheSolutionOfItsEquation(RepetitionInfo repetition) {
        SplittableRandom random = random(repetition);
        double load = between(random, 100, 1200);
        double rate = between(random, 10, 45);
        double mass = between(random, 15, 60);
        double drop = between(random, 1, 30);
        double speed = between(random, 0, 0.5);
        Bounce bounce = Bounce.back(
                        new Swing(new Force(load), new SpringRate(rate), new Mass(mass)),
                        Length.ofMillimetres(drop),
                        new Speed(speed),
                        new Speed(2))
                .result();
        double[] back = integrate(load, rate, mass, drop / 1000, speed);
        assertEquals(back[0], bounce.time().seconds(), 1e-7);
        assertEquals(back[1] * 1000, bounce.farthest().millimetres(), 1e-4);
    }

    /** The time when the blade is back and the farthest it was, by integration. */
    private static double[] integrate(double load, double rate, double mass, double drop, double speed) {
        double[] found = {Double.NaN, drop};
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 1e-2, 1e-12, 1e-12);
        integrator.addEventHandler(
                event((t, y) -> y[0], (t, y) -> found[0] = t, EventHandler.Action.STOP), 1e-3, 1e-12, 100);
        integrator.addEventHandler(
                event((t, y) -> y[1], (t, y) -> found[1] = y[0], EventHandler.Action.CONTINUE), 1e-3, 1e-12, 100);
        integrator.integrate(equation(load, rate, mass), 0, new double[] {drop, speed}, 10, new double[2]);
        return found;
    }

    private static FirstOrderDifferentialEquations equation(double load, double rate, double mass) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] change) {
                change[0] = y[1];
                change[1] = -(load + 2 * rate * 1000 * y[0]) / mass;
            }
        };
    }

    private interface Watch {
        double at(double t, double[] y);
    }

    private static EventHandler event(Watch zero, Watch found, EventHandler.Action then) {
        return new EventHandler() {
            @Override
            public void init(double t0, double[] y0, double t) {}

            @Override
            public double g(double t, double[] y) {
                return zero.at(t, y);
            }

            @Override
            public Action eventOccurred(double t, double[] y, boolean increasing) {
                found.at(t, y);
                return then;
            }

            @Override
            public void resetState(double t, double[] y) {}
        };
    }

    @RepeatedTest(20)
    void lineLoadsAddUpToTheLoadAndItsMoment(RepetitionInfo repetition) {
        SplittableRandom random = random(repetition);
        double blade = between(random, 400, 2400);
        double load = between(random, 100, 1200);
        double off = between(random, -0.49, 0.49) * blade;
        EdgeLoads ends = EdgeLoads.of(new Force(load), new PreciseLength(off), Length.ofMillimetres(blade))
                .result();
        double contact = ends.contact().millimetres();
        double start = off > 0 ? blade / 2 - contact : -blade / 2;
        double left = ends.left().newtonsPerMillimetre();
        double right = ends.right().newtonsPerMillimetre();
        SimpsonIntegrator simpson = new SimpsonIntegrator();
        double total =
                simpson.integrate(100_000, y -> left + (right - left) * (y - start) / contact, start, start + contact);
        double moment = simpson.integrate(
                100_000, y -> y * (left + (right - left) * (y - start) / contact), start, start + contact);
        assertEquals(load, total, 1e-6 * load);
        assertEquals(load * off, moment, 1e-5 * load * blade);
    }
}
