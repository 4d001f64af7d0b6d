package beltmark.core.problem.bank.spring;

import beltmark.core.blade.SettingForLoad;
import beltmark.core.problem.Carry;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.NumberRange;
import beltmark.core.problem.Part;
import beltmark.core.problem.Tolerance;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import java.util.List;
import java.util.Optional;

/** What is asked on the way from a line load to a spring setting; each part builds on the one before. */
final class LoadParts {

    private static final String LOAD = "spring-load-blade";
    private static final String EACH = "spring-load-each";
    private static final String COMPRESSION = "spring-load-compression";
    private static final String COIL = "spring-load-coil";
    private static final String VALUE = "value";

    private final LoadScene scene;
    private final FamilyRanges ranges;
    private final SettingForLoad setting;
    private final List<Step> steps;
    private final Force load;
    private final Force weight;

    LoadParts(LoadScene scene, FamilyRanges ranges) {
        this.scene = scene;
        this.ranges = ranges;
        this.setting = scene.setting().result();
        this.steps = scene.setting().steps();
        this.load = scene.load();
        this.weight = scene.moving().weight();
    }

    static void check(FamilyRanges ranges) {
        ranges.number("forceAnswers");
        ranges.span("compression");
        ranges.span("spring");
    }

    Part load() {
        List<NumberSlip> slips = List.of(
                new NumberSlip("half-load", load.newtons() / 2),
                new NumberSlip("weight-added", load.plus(weight).newtons()),
                new NumberSlip("weight-taken-off", load.minus(weight).newtons()));
        return new Part(
                LOAD,
                List.of(),
                List.of(force(load, slips, Carry.none())),
                List.of(Step.of("load-from-line-load", "lineLoad", scene.wanted())
                        .with("blade", scene.blade())
                        .with("load", load)));
    }

    Part each() {
        double mass = scene.moving().kilograms();
        List<NumberSlip> slips = List.of(
                new NumberSlip("one-spring", load.plus(weight).newtons()),
                new NumberSlip("weight-wrong-sign", load.minus(weight).newtons() / 2),
                new NumberSlip("weight-left-out", load.newtons() / 2),
                new NumberSlip("mass-as-force", (load.newtons() + mass) / 2));
        Carry<Double> carry =
                own -> Optional.of((own.number(Part.path(LOAD, VALUE), load.newtons()) + weight.newtons()) / 2);
        return new Part(
                EACH,
                List.of(),
                List.of(force(setting.each(), slips, carry)),
                List.of(
                        Step.of("load-weight", "mass", scene.moving()).with("weight", weight),
                        Step.of("load-each", "load", load)
                                .with("weight", weight)
                                .with("each", setting.each())));
    }

    Part compression() {
        List<Slip> slips = List.of(
                new Slip("one-spring", change(setting.each().times(2))),
                new Slip("halved-again", change(setting.each().times(0.5))),
                new Slip("weight-left-out", change(load.times(0.5))));
        Carry<Length> carry = own -> Optional.of(change(
                new Force(own.number(Part.path(EACH, VALUE), setting.each().newtons()))));
        Length right = change(setting.each());
        return new Part(
                COMPRESSION,
                List.of(),
                List.of(length(right, Blanks.READING, ranges.span("compression"), slips, carry)),
                List.of(Step.of("load-compression", "each", setting.each())
                        .with("rate", scene.spring().rate())
                        .with("compression", right)));
    }

    private Length change(Force force) {
        return scene.spring().rate().change(force);
    }

    Part coil() {
        Length free = scene.spring().free();
        Length compression = free.minus(setting.coil());
        Length washer = scene.card().washer();
        List<Slip> slips = List.of(
                new Slip("added", free.plus(compression)),
                new Slip("washer-taken-off", setting.coil().minus(washer)),
                new Slip("washer-in-it", setting.measured()),
                new Slip("compression-again", compression));
        Carry<Length> carry = own -> Optional.of(free.minus(own.length(Part.path(COMPRESSION, VALUE), compression)));
        return new Part(
                COIL,
                List.of(),
                List.of(length(setting.coil(), Blanks.SETTING, ranges.span("spring"), slips, carry)),
                List.of(steps.get(1)));
    }

    Part setting() {
        Length washer = scene.card().washer();
        Length free = scene.spring().free();
        List<Slip> slips = List.of(
                new Slip("washer-forgotten", rounded(setting.coil())),
                new Slip("washer-taken-off", rounded(setting.coil().minus(washer))),
                new Slip("washer-twice", rounded(setting.measured().plus(washer))),
                new Slip(
                        "weight-left-out",
                        rounded(free.minus(change(load.times(0.5))).plus(washer))));
        Carry<Length> carry = own -> Optional.of(
                rounded(own.length(Part.path(COIL, VALUE), setting.coil()).plus(washer)));
        return new Part(
                "spring-load-setting",
                List.of(),
                List.of(length(scene.set(), Blanks.SETTING, ranges.span("spring"), slips, carry)),
                List.of(
                        steps.get(2),
                        Step.of("load-rounded", "measured", setting.measured()).with("set", scene.set())));
    }

    private static Length rounded(Length length) {
        return length.roundedTo(Graduation.SIXTEENTH_INCH);
    }

    private NumberBlank force(Force right, List<NumberSlip> slips, Carry<Double> carry) {
        NumberRange answers = ranges.number("forceAnswers");
        return new NumberBlank(
                VALUE,
                Blanks.FORCE,
                right.newtons(),
                Tolerance.ONE_PERCENT,
                answers.from(),
                answers.to(),
                slips,
                carry);
    }

    private static LengthBlank length(
            Length right, Length tolerance, LengthSpan span, List<Slip> slips, Carry<Length> carry) {
        return new LengthBlank(VALUE, right, tolerance, span, slips, carry);
    }
}
