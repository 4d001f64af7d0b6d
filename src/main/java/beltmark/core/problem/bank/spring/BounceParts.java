package beltmark.core.problem.bank.spring;

import beltmark.core.blade.Bounce;
import beltmark.core.blade.BushingBand;
import beltmark.core.measure.Unit;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Exhibit;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.NumberBlank.Units;
import beltmark.core.problem.NumberRange;
import beltmark.core.problem.Part;
import beltmark.core.problem.Tolerance;
import beltmark.core.setup.Side;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Mass;
import beltmark.core.units.Quantity;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Word;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is asked of a bounce by hand. */
final class BounceParts {

    private static final String CAUSE = "bounce-cause";
    private static final String PICK = "pick";
    private static final double STANDARD_GRAVITY = 9.80665;

    private final BounceScene scene;
    private final FamilyRanges ranges;

    BounceParts(BounceScene scene, FamilyRanges ranges) {
        this.scene = scene;
        this.ranges = ranges;
    }

    static void check(FamilyRanges ranges) {
        ranges.number("frequencyAnswers");
        ranges.number("forceAnswers");
    }

    Part frequency() {
        double right = scene.expected().hertz();
        SpringRate half = new SpringRate(scene.rate().newtonsPerMillimetre() / 2);
        Mass heavy = new Mass(scene.mass().kilograms() * STANDARD_GRAVITY);
        List<NumberSlip> slips = List.of(
                new NumberSlip("one-spring", hertz(half, scene.mass())),
                new NumberSlip("radians", scene.expected().radiansPerSecond()),
                new NumberSlip("weight-for-mass", hertz(scene.rate(), heavy)),
                new NumberSlip("root-forgotten", right * scene.expected().radiansPerSecond()));
        return new Part(
                "bounce-frequency",
                List.of(new Given("load-rate", scene.rate()), new Given("bounce-mass", scene.mass())),
                List.of(number("hertz", Units.of(Unit.HERTZ), right, "frequencyAnswers", slips)),
                Bounce.frequency(scene.rate(), scene.mass(), new Mass(0)).steps());
    }

    private static double hertz(SpringRate rate, Mass mass) {
        return Bounce.frequency(rate, mass, new Mass(0)).result().hertz();
    }

    Part band() {
        BushingBand band = scene.band();
        double f = scene.friction().value();
        Force net = scene.net();
        List<NumberSlip> low = List.of(
                new NumberSlip("share-taken-off", net.times(1 - f).newtons()),
                new NumberSlip("other-way", band.high().newtons()),
                new NumberSlip("friction-left-out", net.newtons()));
        List<NumberSlip> high = List.of(
                new NumberSlip("share-added", net.times(1 + f).newtons()),
                new NumberSlip("other-way", band.low().newtons()),
                new NumberSlip("friction-left-out", net.newtons()));
        return new Part(
                "bounce-band",
                List.of(new Given("bounce-net", net), new Given("bounce-friction", scene.friction())),
                List.of(
                        number("low", Blanks.FORCE, band.low().newtons(), "forceAnswers", low),
                        number("high", Blanks.FORCE, band.high().newtons(), "forceAnswers", high)),
                List.of(Step.of("bushing-band", "net", net)
                        .with("friction", scene.friction())
                        .with("low", band.low())
                        .with("high", band.high())));
    }

    private NumberBlank number(String id, Units units, double right, String range, List<NumberSlip> slips) {
        NumberRange answers = ranges.number(range);
        return new NumberBlank(
                id, units, right, Tolerance.ONE_PERCENT, answers.from(), answers.to(), slips, Carry.none());
    }

    Part cause() {
        Finding finding = scene.seen().finding();
        Map<String, String> slips = new HashMap<>();
        for (Finding other : Finding.values()) {
            if (other != finding) {
                slips.put(other.cause(), finding == Finding.FREE ? "looked-for-more" : overlooked(finding));
            }
        }
        return new Part(
                CAUSE,
                List.of(
                        new Given("bounce-expected", scene.expected()),
                        new Given("bounce-swings", scene.seen().swings()),
                        new Given("bounce-sleeve", scene.card().sleeve())),
                List.of(seen()),
                List.of(new ChoiceBlank(
                        PICK, Stream.of(Finding.values()).map(Finding::cause).toList(), finding.cause(), slips)),
                List.of(Step.of("why-" + finding.cause(), "cause", word(finding.cause()))));
    }

    /** What was not looked at by somebody who names another cause. */
    private static String overlooked(Finding finding) {
        return switch (finding) {
            case FREE -> "looked-for-more";
            case BUILD_UP -> "slowness-overlooked";
            case BINDS -> "creeping-overlooked";
            case BLOCKED -> "short-drop-overlooked";
            case SLACK -> "slack-nut-overlooked";
        };
    }

    private Exhibit seen() {
        BounceScene.Seen seen = scene.seen();
        return new Exhibit(
                "bounce-seen",
                List.of("bounce-what", "bounce-left", "bounce-right"),
                List.of(
                        row(
                                "bounce-comes-back",
                                side -> word(seen.shows(Finding.BINDS, side) ? "bounce-creeps" : "bounce-at-once")),
                        row(
                                "bounce-nut",
                                side -> word(
                                        seen.shows(Finding.SLACK, side) ? "bounce-nut-turns" : "bounce-nut-holds")),
                        row("bounce-drop", side -> seen.drop()),
                        row(
                                "bounce-end",
                                side -> word(
                                        seen.finding() == Finding.BLOCKED
                                                ? "bounce-hard-stop"
                                                : "bounce-sleeve-used"))));
    }

    private interface Cell {
        Quantity on(Side side);
    }

    private static List<Quantity> row(String what, Cell cell) {
        return List.of(word(what), cell.on(Side.LEFT), cell.on(Side.RIGHT));
    }

    private static Word word(String option) {
        return new Word("problem.option." + option);
    }

    Part remedy() {
        Finding finding = scene.seen().finding();
        Map<String, String> slips = new HashMap<>();
        for (Finding other : Finding.values()) {
            if (other != finding) {
                slips.put(
                        other.remedy(),
                        other == Finding.FREE
                                ? "left-as-it-is"
                                : other == Finding.SLACK ? "more-spring" : "remedy-of-another");
            }
        }
        return new Part(
                "bounce-remedy",
                List.of(),
                List.of(new ChoiceBlank(
                        PICK,
                        Stream.of(Finding.values()).map(Finding::remedy).toList(),
                        finding.remedy(),
                        slips,
                        own -> Optional.of(Finding.ofCause(own.choice(Part.path(CAUSE, PICK), finding.cause()))
                                .remedy()))),
                List.of(Step.of("bounce-remedy", "cause", word(finding.cause()))
                        .with("remedy", word(finding.remedy()))));
    }
}
