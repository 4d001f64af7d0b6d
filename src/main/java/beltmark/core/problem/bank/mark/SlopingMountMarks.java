package beltmark.core.problem.bank.mark;

import beltmark.core.geometry.SlopingBelt;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.MountMarkSlips;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Side;
import beltmark.core.setup.Sides;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Solution;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Mount marks on a sloping belt: square to it from each side's own belt mark, and what a plumb tape would make of it. */
public final class SlopingMountMarks implements Recipe {

    private static final Length READING = BeltMarkCup.READING;

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Draws from these ranges and cards; throws {@link IllegalArgumentException} when a range is missing. */
    public SlopingMountMarks(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = cards;
        Stream.of("beltMark", "outOfLevel").forEach(ranges::length);
        ranges.number("slope");
        Stream.of("height", "shift").forEach(ranges::span);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        CupScene.Mounting mounting = MountingDraw.next(draw, cards);
        Length left = draw.length(ranges.length("beltMark"));
        Length right = left.plus(MountingDraw.eitherWay(draw, draw.length(ranges.length("outOfLevel"))));
        Angle slope = Angle.ofDegrees(draw.number(ranges.number("slope")));
        SlopingScene scene = new SlopingScene(mounting, new Sides(left, right), slope);
        List<Given> givens = new ArrayList<>(MountingDraw.givens(mounting));
        givens.add(new Given("sloping-slope", slope));
        return Optional.of(new Posed(scene, givens, List.of(marks(scene), plumb(scene))));
    }

    private Part marks(SlopingScene scene) {
        CupScene.Mounting fitted = scene.mounting();
        MountMarks marks = new MountMarks(scene.beltMarks(), fitted.offset());
        List<Given> givens = new ArrayList<>(List.of(
                new Given("belt-mark-left", scene.beltMarks().left()),
                new Given("belt-mark-right", scene.beltMarks().right())));
        givens.addAll(MountingDraw.offsets(fitted.card()));
        return new Part(
                "sloping-mount-mark",
                givens,
                Stream.of(Side.values())
                        .map(side -> mark(scene, marks.heights().on(side), side))
                        .toList(),
                marks.steps());
    }

    private LengthBlank mark(SlopingScene scene, Length right, Side side) {
        CupScene.Mounting fitted = scene.mounting();
        List<Slip> slips =
                new ArrayList<>(MountMarkSlips.of(fitted.card(), fitted.tip(), fitted.way(), scene.beltMarks(), side));
        if (isFarFromSquare(scene)) {
            Length got = belt(scene).result().gotIfPlumb().toLength();
            slips.add(new Slip("plumb-for-square", scene.beltMarks().on(side).plus(got)));
        }
        return new LengthBlank(side.id(), right, READING, ranges.span("height"), slips, Carry.none());
    }

    private static Solution<SlopingBelt> belt(SlopingScene scene) {
        return SlopingBelt.of(scene.mounting().offset(), scene.slope());
    }

    /** Short offsets and gentle slopes read the same square and plumb, as near as a tape can tell. */
    private static boolean isFarFromSquare(SlopingScene scene) {
        Length got = belt(scene).result().gotIfPlumb().toLength();
        return !got.isWithin(READING.times(2), scene.mounting().offset());
    }

    private Part plumb(SlopingScene scene) {
        Solution<SlopingBelt> belt = belt(scene);
        Length offset = scene.mounting().offset();
        List<Blank> blanks = new ArrayList<>();
        blanks.add(new ChoiceBlank(
                "tape",
                List.of("tape-square-to-belt", "tape-plumb", "tape-along-belt"),
                "tape-square-to-belt",
                Map.of("tape-plumb", "plumb-for-square", "tape-along-belt", "along-for-square")));
        List<Slip> shift = List.of(
                new Slip("cosine-for-tangent", belt.result().gotIfPlumb().toLength()),
                new Slip("degrees-as-percent", offset.times(scene.slope().degrees() / 100)),
                new Slip("other-orientation", otherWay(scene).shiftAlong().toLength()));
        blanks.add(new LengthBlank(
                "shift", belt.result().shiftAlong().toLength(), READING, ranges.span("shift"), shift, Carry.none()));
        if (isFarFromSquare(scene)) {
            List<Slip> reading = List.of(
                    new Slip("same-as-square", offset),
                    new Slip("cosine-multiplied", belt.result().gotIfPlumb().toLength()),
                    new Slip("other-orientation", otherWay(scene).plumbReading().toLength()));
            blanks.add(new LengthBlank(
                    "plumb",
                    belt.result().plumbReading().toLength(),
                    READING,
                    ranges.span("shift"),
                    reading,
                    Carry.none()));
        }
        List<Given> givens = List.of(new Given("sloping-offset", offset));
        return new Part("sloping-plumb", givens, blanks, belt.steps());
    }

    private static SlopingBelt otherWay(SlopingScene scene) {
        CupScene.Mounting fitted = scene.mounting();
        Length other = fitted.card().mountOffset(fitted.tip(), fitted.way().turnedOver());
        return SlopingBelt.of(other, scene.slope()).result();
    }
}
