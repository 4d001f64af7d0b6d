package beltmark.core.problem.bank.spring;

import beltmark.core.blade.NutTurns;
import beltmark.core.measure.Unit;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.NumberRange;
import beltmark.core.problem.Part;
import beltmark.core.problem.Tolerance;
import beltmark.core.setup.Side;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is asked of turning nuts: which way, how much, how many turns, and in what order. */
final class NutParts {

    private static final String CHANGE = "nut-change";
    private static final String SHORTER = "nut-tighten";
    private static final String LONGER = "nut-back-off";
    private static final String BY_TURNS = "nut-by-turns";
    private static final String ONE_FIRST = "nut-one-side-first";
    private static final String SLACK_ONLY = "nut-slack-side-only";

    private static final Length ONE_INCH = Length.ofNanometres(LengthUnit.INCH.nanometres());

    /** A flat of the nut: nobody sets it finer by eye. */
    private static final Tolerance ONE_FLAT = Tolerance.of(1.0 / 6);

    private final NutScene scene;
    private final FamilyRanges ranges;

    NutParts(NutScene scene, FamilyRanges ranges) {
        this.scene = scene;
        this.ranges = ranges;
    }

    static void check(FamilyRanges ranges) {
        ranges.number("turnAnswers");
        ranges.span("change");
    }

    Part way() {
        return new Part(
                "nut-way",
                List.of(),
                Stream.of(Side.values()).map(this::way).toList(),
                Stream.of(Side.values())
                        .map(side -> Step.of(
                                        right(side).equals(SHORTER) ? "nut-shorter" : "nut-longer",
                                        "present",
                                        scene.present().on(side))
                                .with("wanted", scene.wanted()))
                        .toList());
    }

    private Blank way(Side side) {
        String right = right(side);
        String wrong = right.equals(SHORTER) ? LONGER : SHORTER;
        return new ChoiceBlank(side.id(), List.of(SHORTER, LONGER), right, Map.of(wrong, "wrong-way"));
    }

    private String right(Side side) {
        return scene.change(side).isNegative() ? SHORTER : LONGER;
    }

    Part change() {
        return new Part(
                CHANGE,
                List.of(),
                Stream.of(Side.values()).map(this::change).toList(),
                Stream.of(Side.values())
                        .map(side -> Step.of(
                                        "nut-change-" + side.id(),
                                        "present",
                                        scene.present().on(side))
                                .with("wanted", scene.wanted())
                                .with("change", scene.change(side).abs()))
                        .toList());
    }

    private Blank change(Side side) {
        Length right = scene.change(side).abs();
        Length washer = scene.card().washer();
        List<Slip> slips = List.of(
                new Slip("other-side", scene.change(side.opposite()).abs()),
                new Slip("washer-added", right.plus(washer)),
                new Slip("burnt-inch", right.plus(ONE_INCH)));
        return new LengthBlank(side.id(), right, Blanks.READING, ranges.span("change"), slips, Carry.none());
    }

    Part turns() {
        NutScene.RodThread thread = scene.thread();
        return new Part(
                "nut-count",
                List.of(new Given(thread.perInch() == 0 ? "nut-pitch" : "nut-threads", thread.told())),
                Stream.of(Side.values()).map(this::turns).toList(),
                Stream.of(Side.values())
                        .map(side -> Step.of(
                                        "nut-count-" + side.id(),
                                        "change",
                                        new PreciseLength(
                                                scene.change(side).abs().millimetres()))
                                .with("pitch", new PreciseLength(thread.pitch().millimetres()))
                                .with(
                                        "flats",
                                        new Ratio(6 * turns(scene.change(side).abs())))
                                .with(
                                        "turns",
                                        new Ratio(turns(scene.change(side).abs()))))
                        .toList());
    }

    private Blank turns(Side side) {
        Length change = scene.change(side).abs();
        double right = turns(change);
        NumberRange answers = ranges.number("turnAnswers");
        List<NumberSlip> slips = new ArrayList<>(List.of(
                new NumberSlip("other-side", turns(scene.change(side.opposite()).abs())),
                new NumberSlip("pitch-inverted", 1 / right),
                new NumberSlip("flats-for-turns", 6 * right)));
        if (scene.thread().perInch() == 0) {
            slips.add(new NumberSlip("millimetre-a-turn", change.millimetres()));
        } else {
            slips.add(new NumberSlip(
                    "threads-as-millimetres",
                    change.millimetres() / scene.thread().perInch()));
        }
        return new NumberBlank(
                side.id(),
                NumberBlank.Units.of(Unit.ONE),
                right,
                ONE_FLAT,
                answers.from(),
                answers.to(),
                slips,
                own -> Optional.of(turns(own.length(Part.path(CHANGE, side.id()), change))));
    }

    private double turns(Length change) {
        return NutTurns.of(change, scene.thread().pitch()).result().turns().value();
    }

    /** That both sides go step by step keeps the pole square to the belt: common practice, no published source. */
    Part order() {
        return new Part(
                "nut-order",
                List.of(),
                List.of(new ChoiceBlank(
                        "way",
                        List.of(ONE_FIRST, BY_TURNS, SLACK_ONLY),
                        BY_TURNS,
                        Map.of(ONE_FIRST, "one-side-first", SLACK_ONLY, "one-side-only"))),
                List.of(Step.of("nut-evenly", "wanted", scene.wanted())));
    }
}
