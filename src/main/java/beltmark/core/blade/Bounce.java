package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Mass;
import beltmark.core.units.Speed;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Time;

/**
 * How a blade that was pushed off the belt comes back, without friction in the guides: friction only makes it slower.
 * The mass moves by m s'' = -(N0 + 2 k s), s down from the belt line, from a drop h with the downward speed u: with w =
 * sqrt(2 k/m), a = N0/(2 k), R = sqrt((h + a)^2 + (u/w)^2) it is back after t = [atan2(u/w, h + a) + acos(a/R)]/w, the
 * farthest drop is R - a, and v t of belt has passed uncleaned. Own derivation, checked by integration.
 *
 * @param time until the blade is back t
 * @param farthest how far it dropped
 * @param beltPassed the belt that passed meanwhile
 */
public record Bounce(Time time, Length farthest, Length beltPassed) {

    private static final double MILLIMETRES_PER_METRE = 1000;

    /**
     * What swings.
     *
     * @param load of the blade on the belt N0, above 0
     * @param rate of each spring k, above 0
     * @param mass that moves m, above 0
     */
    public record Swing(Force load, SpringRate rate, Mass mass) {

        public Swing {
            Limits.positive("load", load);
            Limits.positive("rate", rate);
            Limits.positive("mass", mass);
        }

        private double angularFrequency() {
            return Math.sqrt(2 * rate.newtonsPerMillimetre() * MILLIMETRES_PER_METRE / mass.kilograms());
        }

        private double sagMillimetres() {
            return load.newtons() / (2 * rate.newtonsPerMillimetre());
        }
    }

    /**
     * Finds the frequency of the bounce, f = sqrt(2 k/(m + 2 m_s/3))/(2 pi). Source: OpenStax College Physics 2e; that a
     * third of each spring's mass swings along is from memory (Rayleigh).
     *
     * @param rate of each spring k, above 0
     * @param mass that moves m, above 0
     * @param springMass the mass of each spring m_s, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Frequency> frequency(SpringRate rate, Mass mass, Mass springMass) {
        Limits.positive("rate", rate);
        Limits.positive("mass", mass);
        Limits.notNegative("springMass", springMass);
        double swinging = mass.kilograms() + 2 * springMass.kilograms() / 3;
        double root = Math.sqrt(2 * rate.newtonsPerMillimetre() * MILLIMETRES_PER_METRE / swinging);
        Frequency frequency = new Frequency(root / (2 * Math.PI));
        return Solution.of(
                frequency,
                Step.of("bounce-frequency", "rate", rate)
                        .with("mass", new Mass(swinging))
                        .with("frequency", frequency));
    }

    /**
     * Finds the way back.
     *
     * @param swing what swings
     * @param drop how far below the belt line it starts h, not negative
     * @param downward how fast it is still going down then u, not negative
     * @param belt the speed of the belt v, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Bounce> back(Swing swing, Length drop, Speed downward, Speed belt) {
        Limits.notNegative("drop", drop);
        Limits.notNegative("downwardSpeed", downward);
        Limits.notNegative("beltSpeed", belt);
        double w = swing.angularFrequency();
        double sag = swing.sagMillimetres();
        double start = drop.millimetres() + sag;
        double speedTerm = downward.metresPerSecond() * MILLIMETRES_PER_METRE / w;
        double radius = Math.hypot(start, speedTerm);
        // a/R can exceed 1 by a rounding when the blade starts on the belt
        double phase = Math.atan2(speedTerm, start) + Math.acos(Math.min(1, sag / radius));
        Time time = new Time(phase / w);
        Length passed = Length.ofMillimetres(belt.metresPerSecond() * MILLIMETRES_PER_METRE * time.seconds());
        return solved(new Bounce(time, Length.ofMillimetres(radius - sag), passed), swing, drop, belt);
    }

    private static Solution<Bounce> solved(Bounce bounce, Swing swing, Length drop, Speed belt) {
        return Solution.of(
                bounce,
                Step.of("bounce-return", "load", swing.load)
                        .with("rate", swing.rate)
                        .with("mass", swing.mass)
                        .with("drop", drop)
                        .with("time", bounce.time),
                Step.of("belt-passed", "beltSpeed", belt)
                        .with("time", bounce.time)
                        .with("beltPassed", bounce.beltPassed));
    }

    /**
     * Finds the belt speed above which the blade leaves the belt at the top of a smooth bump of height h and length l,
     * (h/2)(1 - cos): v = (l/2 pi) sqrt(2 (N0 + 2 k h)/(m h)). Own derivation, checked numerically; the idea is the jump
     * of a cam follower, from memory.
     *
     * @param swing what swings
     * @param height of the bump h, above 0
     * @param length of the bump along the belt l, above 0
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Speed> jumpSpeed(Swing swing, Length height, Length length) {
        Limits.positive("height", height);
        Limits.positive("length", length);
        double force = swing.load.newtons() + 2 * swing.rate.force(height).newtons();
        double metres = height.millimetres() / MILLIMETRES_PER_METRE;
        double root = Math.sqrt(2 * force / (swing.mass.kilograms() * metres));
        Speed speed = new Speed(length.millimetres() / MILLIMETRES_PER_METRE / (2 * Math.PI) * root);
        return Solution.of(
                speed,
                Step.of("jump-speed", "load", swing.load)
                        .with("rate", swing.rate)
                        .with("mass", swing.mass)
                        .with("height", height)
                        .with("length", length)
                        .with("speed", speed));
    }
}
