package beltmark.core.problem.bank.spring;

import beltmark.core.blade.EdgeLoads;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.NumberRange;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Tolerance;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.PreciseLength;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What is asked of a blade that is pushed unevenly. */
final class UnevenParts {

    private static final String LOAD = "uneven-load";
    private static final String LEVER = "uneven-lever";
    private static final String VALUE = "value";
    private static final String LEFT = "uneven-end-left";
    private static final String RIGHT = "uneven-end-right";
    private static final String LIFTS = "uneven-lifts";
    private static final String STAYS = "uneven-stays-down";
    private static final double ONE_PERCENT = 0.01;

    private final UnevenScene scene;
    private final FamilyRanges ranges;
    private final EdgeLoads ends;
    private final List<Step> steps;

    UnevenParts(UnevenScene scene, FamilyRanges ranges) {
        this.scene = scene;
        this.ranges = ranges;
        this.ends = scene.ends().result();
        this.steps = scene.ends().steps();
    }

    static void check(FamilyRanges ranges) {
        ranges.number("forceAnswers");
        ranges.number("lineLoadAnswers");
        ranges.span("lever");
    }

    Part load() {
        Force both = scene.left().plus(scene.right());
        double load = scene.load().newtons();
        NumberRange answers = ranges.number("forceAnswers");
        List<NumberSlip> slips = List.of(
                new NumberSlip("weight-left-out", both.newtons()),
                new NumberSlip("weight-added", both.plus(scene.weight()).newtons()),
                new NumberSlip("half-load", load / 2));
        return new Part(
                LOAD,
                List.of(),
                List.of(new NumberBlank(
                        VALUE,
                        Blanks.FORCE,
                        load,
                        Tolerance.ONE_PERCENT,
                        answers.from(),
                        answers.to(),
                        slips,
                        Carry.none())),
                List.of(Step.of("uneven-load", "left", scene.left())
                        .with("right", scene.right())
                        .with("weight", scene.weight())
                        .with("load", scene.load())));
    }

    Part lever() {
        EdgeLoads.Layout layout = scene.layout();
        Length off = layout.bladeOffCentre();
        double centre = scene.centre().millimetres();
        EdgeLoads.Layout wide = new EdgeLoads.Layout(layout.span().times(2), layout.blade(), off, Length.ZERO);
        double noWeight = EdgeLoads.centreOfPressure(scene.left(), scene.right(), Force.ZERO, layout)
                .millimetres();
        List<Slip> slips = new ArrayList<>(List.of(
                new Slip(
                        "whole-span",
                        lever(
                                EdgeLoads.centreOfPressure(scene.left(), scene.right(), scene.weight(), wide)
                                        .millimetres(),
                                off)),
                new Slip("weight-left-out", lever(noWeight, off))));
        if (!off.equals(Length.ZERO)) {
            slips.add(new Slip("offset-left-out", lever(centre, Length.ZERO)));
            slips.add(new Slip("offset-wrong-way", lever(centre, off.negated())));
        }
        Carry<Length> carry = own -> Optional.of(lever(
                centre
                        * scene.load().newtons()
                        / own.number(Part.path(LOAD, VALUE), scene.load().newtons()),
                off));
        return new Part(
                LEVER,
                List.of(),
                List.of(new LengthBlank(VALUE, lever(centre, off), Blanks.SETTING, ranges.span("lever"), slips, carry)),
                List.of(steps.get(0)));
    }

    private static Length lever(double centreMillimetres, Length off) {
        return Length.ofMillimetres(Math.abs(centreMillimetres - off.millimetres()));
    }

    Part heavy() {
        boolean right = isRightHeavy();
        return new Part(
                "uneven-heavy",
                List.of(),
                List.of(new ChoiceBlank(
                        "end",
                        List.of(LEFT, RIGHT, "uneven-end-neither"),
                        right ? RIGHT : LEFT,
                        Map.of(right ? LEFT : RIGHT, "wrong-end", "uneven-end-neither", "taken-as-even"))),
                List.of(Step.of(
                        right ? "uneven-heavy-right" : "uneven-heavy-left",
                        "lever",
                        lever(scene.centre().millimetres(), scene.layout().bladeOffCentre()))));
    }

    private boolean isRightHeavy() {
        return ends.eccentricity().millimetres() > 0;
    }

    Part ends() {
        boolean lifts = ends.contact().millimetres() < scene.layout().blade().millimetres();
        double even = scene.even();
        double lever = Math.abs(ends.eccentricity().millimetres())
                / scene.layout().blade().millimetres();
        List<NumberSlip> heavySlips = new ArrayList<>(List.of(
                new NumberSlip("taken-as-even", even),
                new NumberSlip("lever-once", even * (1 + lever)),
                new NumberSlip("three-for-six", even * (1 + 3 * lever))));
        List<NumberSlip> lightSlips = new ArrayList<>(
                List.of(new NumberSlip("taken-as-even", even), new NumberSlip("ends-swapped", heavy(ends))));
        if (lifts) {
            heavySlips.add(new NumberSlip("lifting-overlooked", even * (1 + 6 * lever)));
        } else {
            heavySlips.add(new NumberSlip("ends-swapped", light(ends)));
            lightSlips.add(new NumberSlip("three-for-six", even * (1 - 3 * lever)));
        }
        return new Part(
                "uneven-ends",
                List.of(),
                List.of(
                        new ChoiceBlank(
                                "lifts",
                                List.of(STAYS, LIFTS),
                                lifts ? LIFTS : STAYS,
                                Map.of(lifts ? STAYS : LIFTS, lifts ? "lifting-overlooked" : "within-the-sixth"),
                                own -> own(own).map(o -> o.contact().millimetres()
                                                < scene.layout().blade().millimetres()
                                        ? LIFTS
                                        : STAYS)),
                        lineLoad("heavy", UnevenParts::heavy, heavySlips),
                        lineLoad("light", UnevenParts::light, lightSlips)),
                List.of(lifts ? liftStep() : steps.get(1)));
    }

    private Step liftStep() {
        return Step.of("uneven-lifting", "blade", scene.layout().blade())
                .with(
                        "lever",
                        lever(scene.centre().millimetres(), scene.layout().bladeOffCentre()))
                .with("load", scene.load())
                .with("contact", ends.contact())
                .with("heavy", isRightHeavy() ? ends.right() : ends.left());
    }

    private static double heavy(EdgeLoads ends) {
        return Math.max(ends.left().newtonsPerMillimetre(), ends.right().newtonsPerMillimetre());
    }

    private static double light(EdgeLoads ends) {
        return Math.min(ends.left().newtonsPerMillimetre(), ends.right().newtonsPerMillimetre());
    }

    /** The light end is a small difference of large figures, so the floor of the tolerance is 1 % of the even line load. */
    private NumberBlank lineLoad(String id, ToDoubleFunction<EdgeLoads> which, List<NumberSlip> slips) {
        NumberRange answers = ranges.number("lineLoadAnswers");
        return new NumberBlank(
                id,
                Blanks.LINE_LOAD,
                which.applyAsDouble(ends),
                new Tolerance(ONE_PERCENT, ONE_PERCENT * scene.even()),
                answers.from(),
                answers.to(),
                slips,
                own -> own(own).map(which::applyAsDouble));
    }

    private Optional<EdgeLoads> own(OwnFigures own) {
        double load = own.number(Part.path(LOAD, VALUE), scene.load().newtons());
        Length right = lever(scene.centre().millimetres(), scene.layout().bladeOffCentre());
        double lever = own.length(Part.path(LEVER, VALUE), right).millimetres();
        try {
            return Optional.of(EdgeLoads.of(
                            new Force(load),
                            new PreciseLength(isRightHeavy() ? lever : -lever),
                            scene.layout().blade())
                    .result());
        } catch (Refused tipsOver) {
            return Optional.empty();
        }
    }
}
