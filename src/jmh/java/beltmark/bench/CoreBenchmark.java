package beltmark.bench;

import beltmark.core.blade.Assembly;
import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.BladeWear;
import beltmark.core.blade.Bounce;
import beltmark.core.blade.Drag;
import beltmark.core.blade.LoadError;
import beltmark.core.blade.SettingForLoad;
import beltmark.core.blade.SpliceCheck;
import beltmark.core.blade.SpringLengths;
import beltmark.core.geometry.Centring;
import beltmark.core.geometry.SlopingBelt;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Surroundings;
import beltmark.core.spring.CoilGaps;
import beltmark.core.spring.CompressionSpring;
import beltmark.core.spring.SpringEnds;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Angle;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.Ratio;
import beltmark.core.units.Speed;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** What reading a fraction and the calculations of a set-up cost, each with its worked steps. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CoreBenchmark {

    public String fraction = "4 3/4";
    public String decimal = "120.65 mm";
    public Length wire = Length.ofMillimetres(6);
    public Length meanCoil = Length.ofMillimetres(50);
    public Length free = Length.ofMillimetres(114.3);
    public Length washer = Length.ofMillimetres(3.175);
    public Length blade = Length.ofMillimetres(1100);
    public Length splice = Length.ofMillimetres(10);
    public Length exposure = Length.ofMillimetres(38.1);
    public LineLoad wanted = new LineLoad(0.5);
    public Mass mass = new Mass(34);
    public Angle slope = new Angle(10);
    public Reach overslung = reach(-50, 300);
    public Reach underslung = reach(-300, 50);
    public Surroundings surroundings = new Surroundings(
            Length.ofMillimetres(-400),
            Length.ofMillimetres(310),
            List.of(reach(-390, -350), reach(320, 360), reach(-340, -320)));

    private static Reach reach(double low, double high) {
        return new Reach(Length.ofMillimetres(low), Length.ofMillimetres(high));
    }

    @Benchmark
    public LengthReading parseFraction() {
        return LengthReader.read(fraction, LengthUnit.INCH);
    }

    @Benchmark
    public LengthReading parseDecimal() {
        return LengthReader.read(decimal, LengthUnit.INCH);
    }

    private WorkingSpring spring() {
        return coil().working();
    }

    private CompressionSpring coil() {
        return new CompressionSpring(wire, meanCoil, 5, SpringEnds.SQUARED_GROUND, free, 77_200);
    }

    @Benchmark
    public Object springSetting() {
        return SettingForLoad.rounded(
                wanted, spring(), washer, new Assembly(mass, slope, blade), Graduation.SIXTEENTH_INCH);
    }

    @Benchmark
    public Object orientation() {
        OrientationChoice choice = new OrientationChoice(
                Length.ofMillimetres(20), surroundings.leastGap(overslung), surroundings.leastGap(underslung));
        return choice.chosen().orElseThrow();
    }

    @Benchmark
    public Object orientationWithSteps() {
        return new OrientationChoice(
                        Length.ofMillimetres(20), surroundings.leastGap(overslung), surroundings.leastGap(underslung))
                .steps();
    }

    /** The calculations of a whole set-up sheet one after the other, with all their steps. */
    @Benchmark
    public void allOfASheet(Blackhole sheet) {
        CompressionSpring coil = coil();
        WorkingSpring spring = coil.working();
        Assembly assembly = new Assembly(mass, slope, blade);
        sheet.consume(new MountMarks(new Sides(free, blade), exposure).steps());
        sheet.consume(orientationWithSteps());
        sheet.consume(SlopingBelt.of(exposure, slope));
        sheet.consume(Centring.of(
                new Centring.Widths(blade.times(1.3), blade.times(1.1), blade), Length.ZERO, Length.ZERO, splice));
        var set = SettingForLoad.rounded(wanted, spring, washer, assembly, Graduation.SIXTEENTH_INCH);
        Length length = set.result().measured();
        BladeLoad load = BladeLoad.square(spring, new SpringLengths(length, length, washer), assembly)
                .result();
        Length gaps = CoilGaps.sum(wire, meanCoil, 5, false).result();
        sheet.consume(set);
        sheet.consume(LoadError.of(spring.rate(), Length.ofSixteenths(1), Length.ofSixteenths(1)));
        sheet.consume(BladeWear.toRetension(load.load(), spring.rate(), 0.8));
        sheet.consume(SpliceCheck.of(
                spring, length.minus(washer), load.load(), new SpliceCheck.Room(exposure, gaps), splice));
        sheet.consume(Bounce.frequency(spring.rate(), mass, new Mass(0.5)));
        sheet.consume(
                Bounce.back(new Bounce.Swing(load.load(), spring.rate(), mass), splice, new Speed(0), new Speed(2.5)));
        sheet.consume(Drag.of(load.load(), new Ratio(0.6), new Speed(2.5)));
        sheet.consume(Drag.contactPressure(load.lineLoad(), Length.ofMillimetres(8)));
    }
}
