package beltmark.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SECOND;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.WATT;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Compares every conversion with Indriya, the reference implementation of JSR 385; it is given the exact inch, pound and
 * standard gravity only (from memory) and builds the other units from them.
 */
class AgainstUnitsLibraryTest {

    private static final Unit<?> INCH = METRE.multiply(254).divide(10_000);
    private static final Unit<?> FOOT = INCH.multiply(12);
    private static final Unit<?> POUND = KILOGRAM.multiply(45_359_237).divide(100_000_000);
    private static final Unit<?> GRAVITY =
            METRE_PER_SQUARE_SECOND.multiply(980_665).divide(100_000);
    private static final Unit<?> POUND_FORCE = POUND.multiply(GRAVITY);
    private static final Unit<?> MILLIMETRE = MetricPrefix.MILLI(METRE);
    private static final Unit<?> LITRE = CUBIC_METRE.divide(1000);

    static Stream<Arguments> conversions() {
        return Stream.of(
                row("in", INCH, MILLIMETRE, x -> Length.ofInches(x).millimetres()),
                row("mm", MILLIMETRE, INCH, x -> Length.ofMillimetres(x).inches()),
                row("precise in", MILLIMETRE, INCH, x -> new PreciseLength(x).inches()),
                row("lbf", POUND_FORCE, NEWTON, x -> Force.ofPoundsForce(x).newtons()),
                row("N", NEWTON, POUND_FORCE, x -> new Force(x).poundsForce()),
                row(
                        "lbf/in",
                        POUND_FORCE.divide(INCH),
                        NEWTON.divide(MILLIMETRE),
                        x -> SpringRate.ofPoundsForcePerInch(x).newtonsPerMillimetre()),
                row(
                        "N/mm",
                        NEWTON.divide(MILLIMETRE),
                        POUND_FORCE.divide(INCH),
                        x -> new SpringRate(x).poundsForcePerInch()),
                row(
                        "lbf/in of blade",
                        POUND_FORCE.divide(INCH),
                        NEWTON.divide(MILLIMETRE),
                        x -> LineLoad.ofPoundsForcePerInch(x).newtonsPerMillimetre()),
                row(
                        "N/mm of blade",
                        NEWTON.divide(MILLIMETRE),
                        POUND_FORCE.divide(INCH),
                        x -> new LineLoad(x).poundsForcePerInch()),
                row(
                        "psi",
                        POUND_FORCE.divide(INCH.pow(2)),
                        MetricPrefix.MEGA(PASCAL),
                        x -> Pressure.ofPoundsForcePerSquareInch(x).megapascals()),
                row(
                        "MPa",
                        MetricPrefix.MEGA(PASCAL),
                        POUND_FORCE.divide(INCH.pow(2)),
                        x -> new Pressure(x).poundsForcePerSquareInch()),
                row(
                        "kPa",
                        MetricPrefix.KILO(PASCAL),
                        MetricPrefix.MEGA(PASCAL),
                        x -> Pressure.ofKilopascals(x).megapascals()),
                row("lb", POUND, KILOGRAM, x -> Mass.ofPounds(x).kilograms()),
                row("kg", KILOGRAM, POUND, x -> new Mass(x).pounds()),
                row(
                        "weight",
                        KILOGRAM.multiply(GRAVITY),
                        NEWTON,
                        x -> new Mass(x).weight().newtons()),
                row(
                        "ft lbf",
                        POUND_FORCE.multiply(FOOT),
                        JOULE,
                        x -> Energy.ofFootPounds(x).joules()),
                row("J", JOULE, POUND_FORCE.multiply(FOOT), x -> new Energy(x).footPounds()),
                row(
                        "hp",
                        POUND_FORCE.multiply(FOOT).multiply(550).divide(SECOND),
                        WATT,
                        x -> Power.ofHorsepower(x).watts()),
                row("W", WATT, POUND_FORCE.multiply(FOOT).multiply(550).divide(SECOND), x -> new Power(x).horsepower()),
                row(
                        "ft/min",
                        FOOT.divide(MINUTE),
                        METRE_PER_SECOND,
                        x -> Speed.ofFeetPerMinute(x).metresPerSecond()),
                row("m/s", METRE_PER_SECOND, FOOT.divide(MINUTE), x -> new Speed(x).feetPerMinute()),
                row("h", HOUR, SECOND, x -> Time.ofHours(x).seconds()),
                row("s", SECOND, HOUR, x -> new Time(x).hours()),
                row(
                        "rpm",
                        RADIAN.divide(MINUTE),
                        RADIAN.divide(SECOND),
                        x -> Frequency.ofRevolutionsPerMinute(x).hertz()),
                row("ft3", FOOT.pow(3), LITRE, x -> Volume.ofCubicFeet(x).litres()),
                row("L", LITRE, FOOT.pow(3), x -> new Volume(x).cubicFeet()),
                row(
                        "lb/ft2",
                        POUND.divide(FOOT.pow(2)),
                        GRAM.divide(SQUARE_METRE),
                        x -> Coverage.ofPoundsPerSquareFoot(x).gramsPerSquareMetre()),
                row(
                        "g/m2",
                        GRAM.divide(SQUARE_METRE),
                        POUND.divide(FOOT.pow(2)),
                        x -> new Coverage(x).poundsPerSquareFoot()),
                row(
                        "lb/ft",
                        POUND.divide(FOOT),
                        KILOGRAM.divide(METRE),
                        x -> LineMass.ofPoundsPerFoot(x).kilogramsPerMetre()),
                row("kg/m", KILOGRAM.divide(METRE), POUND.divide(FOOT), x -> new LineMass(x).poundsPerFoot()),
                row(
                        "lb/h",
                        POUND.divide(HOUR),
                        KILOGRAM.divide(HOUR),
                        x -> MassFlow.ofPoundsPerHour(x).kilogramsPerHour()),
                row("kg/h", KILOGRAM.divide(HOUR), POUND.divide(HOUR), x -> new MassFlow(x).poundsPerHour()));
    }

    private static Arguments row(String name, Unit<?> from, Unit<?> to, DoubleUnaryOperator own) {
        return Arguments.of(name, from, to, own);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("conversions")
    void agrees(String name, Unit<?> from, Unit<?> to, DoubleUnaryOperator own) throws Exception {
        for (double amount : new double[] {1, 0.0625, 3.75, 120.65, 1234.5}) {
            double expected = from.getConverterToAny(to).convert(amount);
            assertEquals(expected, own.applyAsDouble(amount), 1e-9 * expected + (to == INCH ? 1e-7 : 0), name);
        }
    }

    @Test
    void commandLineUnitsAgree() throws Exception {
        assertEquals(
                POUND_FORCE.getConverterToAny(NEWTON).convert(1),
                beltmark.core.measure.Unit.POUND_FORCE
                        .convert(1, beltmark.core.measure.Unit.NEWTON)
                        .result()
                        .amount(),
                1e-12);
        assertEquals(
                POUND_FORCE
                        .divide(INCH.pow(2))
                        .getConverterToAny(MetricPrefix.KILO(PASCAL))
                        .convert(1),
                beltmark.core.measure.Unit.PSI
                        .convert(1, beltmark.core.measure.Unit.KILOPASCAL)
                        .result()
                        .amount(),
                1e-12);
    }
}
