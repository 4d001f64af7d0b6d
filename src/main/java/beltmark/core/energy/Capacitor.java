package beltmark.core.energy;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Capacitance;
import beltmark.core.units.Energy;
import beltmark.core.units.Limits;
import beltmark.core.units.Resistance;
import beltmark.core.units.Time;
import beltmark.core.units.Voltage;

/**
 * What a charged capacitor stores and how long it stays dangerous: E = C V^2/2, V = V0 exp(-t/(R C)), t = R C ln(V0/V).
 * Source: OpenStax College Physics 2e. Limits to compare with: 50 V within 1 min for capacitors to 600 V (NEC 460.6,
 * seen), 60 V within 5 s, 1 s at plug pins (IEC 60204-1, 6.2.4, seen as an excerpt).
 */
public final class Capacitor {

    private Capacitor() {}

    /**
     * Finds what it stores.
     *
     * @param capacitance C, above 0
     * @param voltage V, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Energy> energy(Capacitance capacitance, Voltage voltage) {
        Limits.positive("capacitance", capacitance);
        Limits.notNegative("voltage", voltage);
        Energy energy = new Energy(capacitance.farads() * voltage.volts() * voltage.volts() / 2);
        return Solution.of(
                energy,
                Step.of("capacitor-energy", "capacitance", capacitance)
                        .with("voltage", voltage)
                        .with("energy", energy));
    }

    /**
     * Finds how long it takes to fall to a voltage.
     *
     * @param resistance it discharges through R, above 0
     * @param capacitance C, above 0
     * @param from the voltage at the start V0, above 0
     * @param to the voltage wanted V, above 0
     * @return t; 0 with ALREADY_BELOW_LIMIT when V is not below V0
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Time> time(Resistance resistance, Capacitance capacitance, Voltage from, Voltage to) {
        Limits.positive("resistance", resistance);
        double decay = decay(capacitance, from, to);
        Time constant = new Time(resistance.ohms() * capacitance.farads());
        Time time = new Time(constant.seconds() * Math.max(0, decay));
        return Solution.of(
                        time,
                        Step.of("time-constant", "resistance", resistance)
                                .with("capacitance", capacitance)
                                .with("constant", constant),
                        Step.of("capacitor-time", "constant", constant)
                                .with("from", from)
                                .with("to", to)
                                .with("time", time))
                .warnIf(decay <= 0, Warning.ALREADY_BELOW_LIMIT);
    }

    /**
     * Finds the voltage left after a time.
     *
     * @param resistance it discharges through R, above 0
     * @param capacitance C, above 0
     * @param from the voltage at the start V0, not negative
     * @param time t, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Voltage> voltageAfter(
            Resistance resistance, Capacitance capacitance, Voltage from, Time time) {
        Limits.positive("resistance", resistance);
        Limits.positive("capacitance", capacitance);
        Limits.notNegative("fromVoltage", from);
        Limits.notNegative("time", time);
        double constant = resistance.ohms() * capacitance.farads();
        Voltage left = new Voltage(from.volts() * Math.exp(-time.seconds() / constant));
        return Solution.of(
                left,
                Step.of("voltage-after", "from", from)
                        .with("constant", new Time(constant))
                        .with("time", time)
                        .with("left", left));
    }

    /**
     * Finds the largest bleed resistor that is quick enough, R = t/(C ln(V0/V)).
     *
     * @param capacitance C, above 0
     * @param from the voltage at the start V0, above 0
     * @param to the voltage that has to be reached V, above 0, below V0
     * @param within the time allowed t, above 0
     * @throws Refused VOLTAGE_NOT_ABOVE_LIMIT when nothing has to bleed off, OUT_OF_RANGE
     */
    public static Solution<Resistance> bleedResistor(Capacitance capacitance, Voltage from, Voltage to, Time within) {
        Limits.positive("time", within);
        double decay = decay(capacitance, from, to);
        if (decay <= 0) {
            throw Refused.because(Refusal.VOLTAGE_NOT_ABOVE_LIMIT)
                    .with("from", from)
                    .with("to", to);
        }
        Resistance resistance = new Resistance(within.seconds() / (capacitance.farads() * decay));
        return Solution.of(
                resistance,
                Step.of("bleed-resistor", "time", within)
                        .with("capacitance", capacitance)
                        .with("from", from)
                        .with("to", to)
                        .with("resistance", resistance));
    }

    private static double decay(Capacitance capacitance, Voltage from, Voltage to) {
        Limits.positive("capacitance", capacitance);
        Limits.positive("fromVoltage", from);
        Limits.positive("toVoltage", to);
        return Math.log(from.volts() / to.volts());
    }
}
