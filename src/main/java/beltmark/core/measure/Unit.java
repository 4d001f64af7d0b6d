package beltmark.core.measure;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Limits;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;

/**
 * The units that tapes, springs and gauges are marked in, and how many of the first unit of their kind each is. The inch,
 * the pound and standard gravity are exact (NIST SP 811, appendix B, seen as an excerpt; the factors from memory).
 */
public enum Unit {
    /** Millimetre. */
    MILLIMETRE("mm", Kind.LENGTH, 1),
    /** Inch. */
    INCH("in", Kind.LENGTH, 25.4),
    /** Foot. */
    FOOT("ft", Kind.LENGTH, 304.8),
    /** Metre. */
    METRE("m", Kind.LENGTH, 1000),
    /** Newton. */
    NEWTON("N", Kind.FORCE, 1),
    /** Pound-force. */
    POUND_FORCE("lbf", Kind.FORCE, Factor.LBF),
    /** Newton per millimetre. */
    NEWTON_PER_MILLIMETRE("N/mm", Kind.RATE, 1),
    /** Pound-force per inch. */
    POUND_FORCE_PER_INCH("lbf/in", Kind.RATE, Factor.LBF / 25.4),
    /** Kilopascal. */
    KILOPASCAL("kPa", Kind.PRESSURE, 1),
    /** Megapascal. */
    MEGAPASCAL("MPa", Kind.PRESSURE, 1000),
    /** Bar. */
    BAR("bar", Kind.PRESSURE, 100),
    /** Pound-force per square inch. */
    PSI("psi", Kind.PRESSURE, Factor.LBF / (25.4 * 25.4) * 1000),
    /** Kilogram. */
    KILOGRAM("kg", Kind.MASS, 1),
    /** Tonne. */
    TONNE("t", Kind.MASS, 1000),
    /** Pound. */
    POUND("lb", Kind.MASS, 0.453_592_37),
    /** Metre per second. */
    METRE_PER_SECOND("m/s", Kind.SPEED, 1),
    /** Foot per minute. */
    FOOT_PER_MINUTE("ft/min", Kind.SPEED, 0.304_8 / 60),
    /** Second. */
    SECOND("s", Kind.TIME, 1),
    /** Hour. */
    HOUR("h", Kind.TIME, 3600),
    /** Joule. */
    JOULE("J", Kind.ENERGY, 1),
    /** Foot-pound-force. */
    FOOT_POUND_FORCE("ft.lbf", Kind.ENERGY, Factor.LBF * 0.304_8),
    /** Watt. */
    WATT("W", Kind.POWER, 1),
    /** Mechanical horsepower, 550 ft lbf/s. */
    HORSEPOWER("hp", Kind.POWER, 550 * Factor.LBF * 0.304_8),
    /** Kilowatt. */
    KILOWATT("kW", Kind.POWER, 1000),
    /** Kilojoule. */
    KILOJOULE("kJ", Kind.ENERGY, 1000),
    /** Minute of time. */
    MINUTE("min", Kind.TIME, 60),
    /** Day. */
    DAY("d", Kind.TIME, 24 * 3600),
    /** Degree of angle. */
    DEGREE("°", Kind.ANGLE, 1),
    /** Hertz. */
    HERTZ("Hz", Kind.FREQUENCY, 1),
    /** Volt. */
    VOLT("V", Kind.VOLTAGE, 1),
    /** Kilogram per hour. */
    KILOGRAM_PER_HOUR("kg/h", Kind.MASS_FLOW, 1),
    /** Pound per hour. */
    POUND_PER_HOUR("lb/h", Kind.MASS_FLOW, 0.453_592_37),
    /** Gram per square metre. */
    GRAM_PER_SQUARE_METRE("g/m²", Kind.COVERAGE, 1),
    /** A bare number: a count or a ratio. */
    ONE("", Kind.RATIO, 1),
    /** Percent. */
    PERCENT("%", Kind.RATIO, 0.01);

    private final String symbol;
    private final Kind kind;
    private final double factor;

    Unit(String symbol, Kind kind, double factor) {
        this.symbol = symbol;
        this.kind = kind;
        this.factor = factor;
    }

    private enum Kind {
        LENGTH,
        FORCE,
        RATE,
        PRESSURE,
        MASS,
        SPEED,
        TIME,
        ENERGY,
        POWER,
        ANGLE,
        FREQUENCY,
        VOLTAGE,
        MASS_FLOW,
        COVERAGE,
        RATIO
    }

    private static final class Factor {
        private static final double LBF = 4.448_221_615_260_5;
    }

    /** A number with its unit. */
    public record Measured(double amount, Unit in) implements Quantity {

        @Override
        public String unit() {
            return in.symbol;
        }
    }

    /** {@return the symbol} */
    public String symbol() {
        return symbol;
    }

    /** {@return whether amounts of both can be compared} */
    public boolean isLike(Unit other) {
        return kind == other.kind;
    }

    /** {@return an amount of this unit in another of the same kind; for amounts that are known to be sound} */
    public double in(Unit other, double amount) {
        return amount * (factor / other.factor);
    }

    /**
     * Converts a number.
     *
     * @param amount in this unit
     * @param to the wanted unit, of the same kind
     * @throws Refused UNITS_DO_NOT_MATCH, NOT_A_NUMBER, OUT_OF_RANGE
     */
    public Solution<Measured> convert(double amount, Unit to) {
        Limits.finite("amount", amount);
        if (kind != to.kind) {
            throw Refused.because(Refusal.UNITS_DO_NOT_MATCH)
                    .with("from", symbol)
                    .with("to", to.symbol);
        }
        Ratio ratio = new Ratio(factor / to.factor);
        Measured converted = new Measured(Limits.finite("amount", amount * factor / to.factor), to);
        return Solution.of(
                converted,
                Step.of("convert", "amount", new Measured(amount, this))
                        .with("factor", ratio)
                        .with("converted", converted));
    }
}
