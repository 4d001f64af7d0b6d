package beltmark.core.spring;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Mass;
import beltmark.core.units.Ratio;
import beltmark.core.units.SpringRate;

/**
 * The natural frequency of a spring's own coils: f = 1/2 sqrt(k/M) between two seats, 1/4 sqrt(k/M) with one end free, with
 * the mass of the active coils M = (pi d^2/4)(pi D Na) rho. At least 15 to 20 times the frequency of what drives it is
 * wanted. Source: Shigley's Mechanical Engineering Design, eq. 10-25 to 10-27 (seen second-hand).
 */
public final class Surge {

    private static final double LEAST_RATIO = 15;
    private static final double CUBIC_MILLIMETRES_PER_CUBIC_METRE = 1e9;
    private static final double NEWTONS_PER_METRE = 1000;

    private Surge() {}

    /**
     * Finds the mass of the active coils.
     *
     * @param wire the wire diameter d, above 0
     * @param meanCoil the mean coil diameter D, above d
     * @param activeCoils the active coils Na, above 0
     * @param density of the wire rho in kg/m3, above 0; about 7850 for steel
     * @throws Refused COIL_NOT_LARGER_THAN_WIRE, NO_ACTIVE_COILS, OUT_OF_RANGE
     */
    public static Solution<Mass> activeMass(Length wire, Length meanCoil, double activeCoils, double density) {
        SpringIndex.checked(wire, meanCoil);
        CoilRate.checkCoils(activeCoils);
        Limits.positive("density", density);
        double section = Math.PI * wire.millimetres() * wire.millimetres() / 4;
        double volume = section * Math.PI * meanCoil.millimetres() * activeCoils;
        Mass mass = new Mass(volume * density / CUBIC_MILLIMETRES_PER_CUBIC_METRE);
        return Solution.of(
                mass,
                Step.of("active-mass", "wire", wire)
                        .with("meanCoil", meanCoil)
                        .with("activeCoils", new Ratio(activeCoils))
                        .with("mass", mass));
    }

    /**
     * Finds the frequency.
     *
     * @param rate the rate k, above 0
     * @param activeMass the mass of the active coils M, above 0
     * @param oneEndFree whether one end stands free instead of on a seat
     */
    public static Solution<Frequency> frequency(SpringRate rate, Mass activeMass, boolean oneEndFree) {
        Limits.positive("rate", rate);
        Limits.positive("mass", activeMass);
        double root = Math.sqrt(rate.newtonsPerMillimetre() * NEWTONS_PER_METRE / activeMass.kilograms());
        Frequency frequency = new Frequency(root / (oneEndFree ? 4 : 2));
        return Solution.of(
                frequency,
                Step.of(oneEndFree ? "surge-free-end" : "surge", "rate", rate)
                        .with("mass", activeMass)
                        .with("frequency", frequency));
    }

    /** {@return the surge frequency, with SURGE_NEAR_FORCING below 15 times what drives it} */
    public static Solution<Frequency> warned(Solution<Frequency> surge, Frequency forcing) {
        Limits.notNegative("forcing", forcing);
        boolean near = Limits.isBelow(surge.result().hertz(), LEAST_RATIO * forcing.hertz());
        return surge.warnIf(near, Warning.SURGE_NEAR_FORCING);
    }
}
