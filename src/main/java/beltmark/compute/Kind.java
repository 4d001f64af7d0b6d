package beltmark.compute;

import beltmark.core.units.Angle;
import beltmark.core.units.Capacitance;
import beltmark.core.units.Coverage;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.LineMass;
import beltmark.core.units.Mass;
import beltmark.core.units.Pressure;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import beltmark.core.units.Resistance;
import beltmark.core.units.Speed;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Time;
import beltmark.core.units.Voltage;
import beltmark.core.units.Volume;
import java.util.List;
import java.util.function.DoubleFunction;

/** What a field holds. A field that holds a number may be given in any unit of its kind: the unit ends its name. */
enum Kind {
    LENGTH(
            unit("Mm", "mm", Length::ofMillimetres),
            unit("In", "in", Length::ofInches),
            unit("M", "m", metres -> Length.ofMillimetres(metres * 1000)),
            unit("Ft", "ft", feet -> Length.ofInches(feet * 12))),
    FORCE(unit("N", "N", Force::new), unit("Lbf", "lbf", Force::ofPoundsForce)),
    RATE(unit("NPerMm", "N/mm", SpringRate::new), unit("LbfPerIn", "lbf/in", SpringRate::ofPoundsForcePerInch)),
    LINE_LOAD(unit("NPerMm", "N/mm", LineLoad::new), unit("LbfPerIn", "lbf/in", LineLoad::ofPoundsForcePerInch)),
    /** A stress or a modulus. */
    STRESS(
            unit("Mpa", "MPa", Pressure::new),
            unit("Gpa", "GPa", gigapascals -> new Pressure(gigapascals * 1000)),
            unit("Psi", "psi", Pressure::ofPoundsForcePerSquareInch)),
    PRESSURE(
            unit("Kpa", "kPa", Pressure::ofKilopascals),
            unit("Mpa", "MPa", Pressure::new),
            unit("Bar", "bar", bar -> new Pressure(bar / 10)),
            unit("Psi", "psi", Pressure::ofPoundsForcePerSquareInch)),
    MASS(unit("Kg", "kg", Mass::new), unit("Lb", "lb", Mass::ofPounds)),
    ANGLE(unit("Deg", "°", Angle::new), unit("Rad", "rad", Angle::ofRadians)),
    SPEED(unit("MPerS", "m/s", Speed::new), unit("FtPerMin", "ft/min", Speed::ofFeetPerMinute)),
    TIME(unit("S", "s", Time::new), unit("Hours", "h", Time::ofHours)),
    FREQUENCY(unit("Hz", "Hz", Frequency::new), unit("Rpm", "1/min", Frequency::ofRevolutionsPerMinute)),
    VOLTAGE(unit("V", "V", Voltage::new)),
    CAPACITANCE(
            unit("Uf", "µF", microfarads -> new Capacitance(microfarads / 1e6)),
            unit("Mf", "mF", Capacitance::ofMillifarads),
            unit("F", "F", Capacitance::new)),
    RESISTANCE(unit("Ohm", "Ω", Resistance::new), unit("Kohm", "kΩ", Resistance::ofKilohms)),
    VOLUME(
            unit("L", "L", Volume::new),
            unit("M3", "m³", cubicMetres -> new Volume(cubicMetres * 1000)),
            unit("Ft3", "ft³", Volume::ofCubicFeet)),
    COVERAGE(unit("GPerM2", "g/m²", Coverage::new), unit("LbPerFt2", "lb/ft²", Coverage::ofPoundsPerSquareFoot)),
    LINE_MASS(unit("KgPerM", "kg/m", LineMass::new), unit("LbPerFt", "lb/ft", LineMass::ofPoundsPerFoot)),
    DENSITY(unit("KgPerM3", "kg/m³", Ratio::new)),
    INERTIA(unit("KgM2", "kg m²", Ratio::new)),
    NUMBER(unit("", "", Ratio::new)),
    /** Numbers in square brackets. */
    NUMBERS,
    /** Lengths in square brackets, all in the unit that ends the name. */
    LENGTHS("Mm", "In"),
    /** Pairs of a low and a high length in square brackets. */
    REACHES("Mm", "In"),
    /** One of several words. */
    CHOICE,
    TEXT,
    FLAG;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of; the readers have no state
    private final List<Unit> units;

    Kind(Unit... units) {
        this.units = List.of(units);
    }

    Kind(String millimetres, String inches) {
        this(unit(millimetres, "mm", Length::ofMillimetres), unit(inches, "in", Length::ofInches));
    }

    /**
     * A unit of a kind.
     *
     * @param suffix what the name of the field ends with
     * @param symbol as printed
     * @param reader makes the quantity of a number in this unit
     */
    record Unit(String suffix, String symbol, DoubleFunction<? extends Quantity> reader) {

        static final Unit NONE = new Unit("", "", Ratio::new);
    }

    private static Unit unit(String suffix, String symbol, DoubleFunction<? extends Quantity> reader) {
        return new Unit(suffix, symbol, reader);
    }

    /** The units in which it may be given, the usual one first; one without suffix for what has none. */
    List<Unit> units() {
        return units.isEmpty() ? List.of(Unit.NONE) : units;
    }
}
