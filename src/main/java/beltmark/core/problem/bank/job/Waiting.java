package beltmark.core.problem.bank.job;

import beltmark.core.energy.Rollback;
import beltmark.core.energy.SpringEnergy;
import beltmark.core.energy.TakeUp;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.LineMass;
import beltmark.core.units.Mass;
import beltmark.core.units.Power;
import beltmark.core.units.Pressure;
import beltmark.core.units.Quantity;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Voltage;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What can move or strike although the motor is locked.
 *
 * @param kind what it is
 * @param size how big it is
 * @param state how far it is charged; nought when there is nothing in it by this reading
 */
record Waiting(Kind kind, Quantity size, Quantity state) {

    /** Where energy can wait. */
    enum Kind {
        WEIGHT("mass", "fall"),
        SPRINGS("rate", "compression"),
        AIR("bore", "gauge"),
        INCLINE("load", "lift"),
        DRIVE("kilowatts", "volts");

        private final String sizes;
        private final String states;

        Kind(String sizes, String states) {
            this.sizes = sizes;
            this.states = states;
        }

        String option() {
            return "lo-" + name().toLowerCase(Locale.ROOT);
        }
    }

    /** Names the ranges that are drawn from. */
    static final List<String> RANGES = Stream.of(Kind.values())
            .flatMap(kind -> Stream.of(kind.sizes, kind.states))
            .toList();

    /** {@return one as drawn; both numbers are drawn whether it is charged or not} */
    static Waiting of(Kind kind, Draw draw, FamilyRanges ranges, boolean charged) {
        double size = draw.number(ranges.number(kind.sizes));
        double drawn = draw.number(ranges.number(kind.states));
        double state = charged ? drawn : 0;
        return switch (kind) {
            case WEIGHT -> new Waiting(kind, new Mass(size), Length.ofMillimetres(state));
            case SPRINGS -> new Waiting(kind, new SpringRate(size), Length.ofMillimetres(state));
            case AIR -> new Waiting(kind, Length.ofMillimetres(size), new Pressure(state));
            case INCLINE -> new Waiting(kind, new LineMass(size), Length.ofMillimetres(state));
            case DRIVE -> new Waiting(kind, new Power(size * 1000), new Voltage(state));
        };
    }

    /** {@return whether it holds energy, by the core's formula where there is one} */
    boolean holds() {
        if (size instanceof Mass mass && state instanceof Length height) {
            return TakeUp.of(mass, height).result().energy().joules() > 0;
        }
        if (size instanceof SpringRate rate && state instanceof Length compression) {
            return SpringEnergy.of(rate, compression, 2).result().joules() > 0;
        }
        if (size instanceof LineMass load && state instanceof Length lift) {
            // friction is not counted on to hold a belt
            return Rollback.of(load, lift, Force.ZERO).result().newtons() > 0;
        }
        return state.amount() > 0;
    }
}
