package beltmark.core.problem.bank.spring;

import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Angle;
import java.util.List;
import java.util.Optional;

/**
 * The angle of the blade to the belt: reading it, turning the pole to the wanted one, setting it with a plumb instrument
 * on a sloping belt, and what a pivot mounted low does to a tip on an arm. No card is drawn: none tells an angle.
 */
public final class BladeAngle implements Recipe {

    private static final double LEAST_TURN = 4;
    private static final double LEAST_LEAN = 2;
    private static final double SQUARE = 90;

    private final FamilyRanges ranges;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public BladeAngle(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        List.of("present", "wanted", "slope").forEach(ranges::number);
        List.of("arm", "armHeight", "mountedLow").forEach(ranges::length);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        Angle present = new Angle(draw.number(ranges.number("present")));
        Angle wanted = new Angle(draw.number(ranges.number("wanted")));
        double slope = draw.number(ranges.number("slope"));
        Angle signed = new Angle(draw.below(2) == 0 ? slope : -slope);
        AngleScene.Arm arm = new AngleScene.Arm(
                draw.length(ranges.length("arm")),
                draw.length(ranges.length("armHeight")),
                draw.length(ranges.length("mountedLow")));
        double lean = Math.abs(wanted.degrees() + signed.degrees() - SQUARE);
        if (Math.abs(present.degrees() - wanted.degrees()) < LEAST_TURN || lean < LEAST_LEAN) {
            return Optional.empty();
        }
        AngleScene scene = new AngleScene(present, wanted, signed, arm);
        AngleParts parts = new AngleParts(scene);
        return Optional.of(new Posed(
                scene,
                List.of(new Given("angle-wanted", wanted)),
                List.of(parts.reading(), parts.turning(), parts.plumb(), parts.arm())));
    }
}
