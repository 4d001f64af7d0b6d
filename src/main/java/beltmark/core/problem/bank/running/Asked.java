package beltmark.core.problem.bank.running;

import beltmark.core.measure.Unit;
import beltmark.core.problem.Carry;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.NumberBlank.Units;
import beltmark.core.problem.Tolerance;
import java.util.List;

/** Makes the blanks of these problems: computed amounts, judged to one percent. */
final class Asked {

    static final Units FORCE = new Units(Unit.NEWTON, Unit.POUND_FORCE);
    static final Units POWER = new Units(Unit.WATT, Unit.HORSEPOWER);
    static final Units FLOW = new Units(Unit.KILOGRAM_PER_HOUR, Unit.POUND_PER_HOUR);
    static final Units MASS = new Units(Unit.TONNE, Unit.POUND);
    static final Units ENERGY = new Units(Unit.JOULE, Unit.FOOT_POUND_FORCE);
    static final Units LENGTH = new Units(Unit.MILLIMETRE, Unit.INCH);
    static final Units HOURS = Units.of(Unit.HOUR);
    static final Units SECONDS = Units.of(Unit.SECOND);
    static final Units PERCENT = Units.of(Unit.PERCENT);

    private static final double MOST_TIMES_OVER = 10_000;

    private Asked() {}

    /** {@return a number that may be anything from nought to far more than any slip leads to} */
    static NumberBlank number(String id, Units units, double right, List<NumberSlip> slips, Carry<Double> carry) {
        return new NumberBlank(id, units, right, Tolerance.ONE_PERCENT, 0, right * MOST_TIMES_OVER + 1, slips, carry);
    }

    static NumberSlip slip(String id, double amount) {
        return new NumberSlip(id, amount);
    }
}
