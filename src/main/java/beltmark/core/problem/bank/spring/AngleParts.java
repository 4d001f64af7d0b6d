package beltmark.core.problem.bank.spring;

import beltmark.core.geometry.ArmAngle;
import beltmark.core.geometry.BladeLean;
import beltmark.core.measure.Unit;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Given;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Tolerance;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is asked of a blade angle. */
final class AngleParts {

    private static final String READ = "blade-angle-read";
    private static final String ANGLE = "angle";
    private static final String WITH = "turn-with-travel";
    private static final String AGAINST = "turn-against-travel";
    private static final double STRAIGHT = 180;
    private static final double SQUARE = 90;
    private static final double TEN = 10;

    /** Half a graduation of the protractor. */
    private static final Tolerance READING = Tolerance.of(0.5);
    /** An angle worked out. */
    private static final Tolerance COMPUTED = Tolerance.of(0.1);

    private final AngleScene scene;
    private final double present;
    private final double wanted;

    AngleParts(AngleScene scene) {
        this.scene = scene;
        this.present = scene.present().degrees();
        this.wanted = scene.wanted().degrees();
    }

    private static NumberBlank degrees(
            String id, double right, Tolerance tolerance, List<NumberSlip> slips, Carry<Double> carry) {
        return new NumberBlank(id, NumberBlank.Units.of(Unit.DEGREE), right, tolerance, 0, STRAIGHT, slips, carry);
    }

    Part reading() {
        double tens = Math.floor(present / TEN) * TEN;
        List<NumberSlip> slips = List.of(
                new NumberSlip("other-scale", STRAIGHT - present),
                new NumberSlip("from-square", Math.abs(SQUARE - present)),
                new NumberSlip("counted-back", 2 * tens - present),
                new NumberSlip("ten-on", present + TEN));
        return new Part(
                READ,
                List.of(),
                List.of(degrees(ANGLE, present, READING, slips, Carry.none())),
                List.of(Step.of("blade-angle-read", "tens", new Angle(tens)).with("present", scene.present())));
    }

    Part turning() {
        List<NumberSlip> slips = List.of(
                new NumberSlip("other-scale", Math.abs(wanted - (STRAIGHT - present))),
                new NumberSlip("turned-by-wanted", wanted),
                new NumberSlip("from-square", SQUARE - wanted));
        ChoiceBlank way = new ChoiceBlank(
                "way",
                List.of(WITH, AGAINST),
                way(present),
                Map.of(way(2 * wanted - present), "wrong-direction"),
                own -> Optional.of(way(own(own))));
        return new Part(
                "blade-angle-turn",
                List.of(),
                List.of(
                        way,
                        degrees(
                                "amount",
                                Math.abs(wanted - present),
                                READING,
                                slips,
                                own -> Optional.of(Math.abs(wanted - own(own))))),
                List.of(Step.of(wanted > present ? "blade-angle-open" : "blade-angle-close", "present", scene.present())
                        .with("wanted", scene.wanted())
                        .with("turn", new Angle(Math.abs(wanted - present)))));
    }

    private double own(OwnFigures own) {
        return own.number(Part.path(READ, ANGLE), present);
    }

    /** The angle on the side the belt comes from opens when the tip is turned against the travel. */
    private String way(double from) {
        return wanted > from ? AGAINST : WITH;
    }

    Part plumb() {
        Angle slope = scene.slope();
        Solution<Angle> lean = BladeLean.fromPlumb(scene.wanted(), slope);
        double right = Math.abs(lean.result().degrees());
        List<NumberSlip> slips = List.of(
                new NumberSlip("slope-left-out", lean(Angle.ZERO)),
                new NumberSlip("slope-wrong-way", lean(new Angle(-slope.degrees()))),
                new NumberSlip("from-level", SQUARE - right),
                new NumberSlip("angle-to-belt", wanted));
        return new Part(
                "blade-angle-plumb",
                List.of(new Given(
                        slope.degrees() > 0 ? "angle-belt-up" : "angle-belt-down",
                        new Angle(Math.abs(slope.degrees())))),
                List.of(degrees("lean", right, COMPUTED, slips, Carry.none())),
                List.of(Step.of(slope.degrees() > 0 ? "blade-plumb-up" : "blade-plumb-down", "toBelt", scene.wanted())
                        .with("slope", new Angle(Math.abs(slope.degrees())))
                        .with("lean", new Angle(right))));
    }

    private double lean(Angle slope) {
        return Math.abs(BladeLean.fromPlumb(scene.wanted(), slope).result().degrees());
    }

    Part arm() {
        AngleScene.Arm arm = scene.arm();
        Solution<Angle> error = ArmAngle.error(arm.length(), arm.height(), arm.low());
        List<NumberSlip> slips = List.of(
                new NumberSlip("from-flat", size(arm.length(), Length.ZERO, arm.low())),
                new NumberSlip(
                        "wrong-direction",
                        size(arm.length(), arm.height(), arm.low().negated())),
                new NumberSlip(
                        "whole-rise",
                        size(arm.length(), Length.ZERO, arm.height().plus(arm.low()))));
        return new Part(
                "blade-angle-arm",
                List.of(
                        new Given("angle-arm", arm.length()),
                        new Given("angle-arm-height", arm.height()),
                        new Given("angle-arm-low", arm.low())),
                List.of(degrees("error", error.result().degrees(), COMPUTED, slips, Carry.none())),
                error.steps());
    }

    private static double size(Length arm, Length height, Length off) {
        return Math.abs(ArmAngle.error(arm, height, off).result().degrees());
    }
}
