package beltmark.core.blade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.core.spring.CoilGaps;
import beltmark.core.spring.CompressionSpring;
import beltmark.core.spring.Overrun;
import beltmark.core.spring.SpringEnds;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Angle;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares with a chart of the demo hardware that was worked out by a second program. */
class DemoChartTest {

    private static final Length WASHER = Length.ofMillimetres(3.175);
    private static final Length CONTACT = Length.ofMillimetres(8);
    private static final Length DROP = Length.ofMillimetres(38);

    static Stream<double[]> rows() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/core/demo-chart.csv")).stream()
                .skip(1)
                .map(row -> Stream.of(row.split(",", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesOnEveryColumn(double[] row) {
        CompressionSpring coil = spring(row);
        WorkingSpring spring = coil.working();
        Assembly assembly = new Assembly(new Mass(row[5]), Angle.ZERO, millimetres(row, 0));
        LineLoad wanted = new LineLoad(0.5);
        var exact = SettingForLoad.of(wanted, spring, WASHER, assembly).result();
        var set = SettingForLoad.rounded(wanted, spring, WASHER, assembly, Graduation.SIXTEENTH_INCH)
                .result();
        BladeLoad load = set.load();
        assertEquals(row[6], exact.measured().millimetres(), 0.005);
        assertEquals(Length.ofSixteenths(Math.round(row[7])), set.measured());
        assertEquals(row[8], load.load().newtons(), 0.5);
        assertEquals(row[9], load.lineLoad().newtonsPerMillimetre(), 0.0005);
        assertEquals(row[10], load.lineLoad().poundsForcePerInch(), 0.005);
        assertEquals(
                row[11], Drag.contactPressure(load.lineLoad(), CONTACT).result().kilopascals(), 0.5);
        Length tick = Graduation.SIXTEENTH_INCH.step();
        double error = LoadError.of(coil.rate(), tick, tick).result().worst().newtons();
        assertEquals(row[12], 100 * error / load.load().newtons(), 0.06);
        assertEquals(
                row[13],
                BladeWear.toRetension(load.load(), coil.rate(), 0.8).result().millimetres(),
                0.005);
        atWork(row, coil, set.measured().minus(WASHER));
    }

    private static void atWork(double[] row, CompressionSpring coil, Length set) {
        Length gaps = CoilGaps.sum(coil.wire(), coil.meanCoil(), coil.activeCoils(), false)
                .result();
        assertEquals(row[14], set.minus(coil.solidLength()).minus(gaps).millimetres(), 0.06);
        double overrun = Overrun.of(coil.working(), coil.forceAt(set.minus(DROP)))
                .result()
                .value();
        assertEquals(row[15], overrun, 0.0051);
        double hertz = Bounce.frequency(coil.rate(), new Mass(row[5]), new Mass(0))
                .result()
                .hertz();
        assertEquals(row[16], hertz, 0.005);
    }

    private static CompressionSpring spring(double[] row) {
        return new CompressionSpring(
                millimetres(row, 1),
                millimetres(row, 2),
                row[3],
                SpringEnds.SQUARED_GROUND,
                millimetres(row, 4),
                77_200);
    }

    private static Length millimetres(double[] row, int column) {
        return Length.ofMillimetres(row[column]);
    }
}
