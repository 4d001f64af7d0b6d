package beltmark.core.problem.bank.mark;

import beltmark.core.geometry.SlopingBelt;
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
import beltmark.core.solution.Step;
import beltmark.core.units.Angle;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.PreciseLength;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Belt marks with the cup taken out, each side's own mount mark, and the pole that follows the belt, not gravity. */
public final class BeltMarkCup implements Recipe {

    static final Length READING = Graduation.THIRTY_SECOND_INCH.step();
    private static final String BELT_MARK = "cup-belt-mark";

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Draws from these ranges and cards; throws {@link IllegalArgumentException} when a range is missing. */
    public BeltMarkCup(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = cards;
        Stream.of("edge", "outOfLevel", "cup").forEach(ranges::length);
        ranges.number("tilt");
        Stream.of("height", "gap").forEach(ranges::span);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        CupScene.Mounting mounting = MountingDraw.next(draw, cards);
        Length left = draw.length(ranges.length("edge"));
        Length right = left.plus(MountingDraw.eitherWay(draw, draw.length(ranges.length("outOfLevel"))));
        CupScene scene = new CupScene(
                mounting,
                new Sides(left, right),
                draw.length(ranges.length("cup")),
                Angle.ofDegrees(draw.number(ranges.number("tilt"))));
        return Optional.of(new Posed(
                scene, MountingDraw.givens(mounting), List.of(beltMark(scene), mountMark(scene), pole(scene))));
    }

    private Part beltMark(CupScene scene) {
        List<Given> givens = List.of(
                new Given("cup-edge-left", scene.edges().left()),
                new Given("cup-edge-right", scene.edges().right()),
                new Given("cup-depth", scene.cup()));
        List<Step> steps = Stream.of(Side.values())
                .flatMap(side -> scene.beltMark(side).steps().stream())
                .toList();
        return new Part(
                BELT_MARK,
                givens,
                Stream.of(Side.values()).map(side -> beltMark(scene, side)).toList(),
                steps);
    }

    private LengthBlank beltMark(CupScene scene, Side side) {
        Length edge = scene.edges().on(side);
        List<Slip> slips = List.of(
                new Slip("cup-left-in", edge),
                new Slip("cup-taken-off", edge.minus(scene.cup())),
                new Slip("cup-halved", edge.plus(scene.cup().times(0.5))),
                new Slip("other-side", scene.beltMarks().on(side.opposite())));
        return new LengthBlank(
                        side.id(), scene.beltMark(side).result(), READING, ranges.span("height"), slips, Carry.none())
                .markedOnDrawing();
    }

    private Part mountMark(CupScene scene) {
        CupScene.Mounting fitted = scene.mounting();
        MountMarks marks = new MountMarks(scene.beltMarks(), fitted.offset());
        return new Part(
                "cup-mount-mark",
                MountingDraw.offsets(fitted.card()),
                Stream.of(Side.values())
                        .map(side -> new LengthBlank(
                                side.id(),
                                marks.heights().on(side),
                                READING,
                                ranges.span("height"),
                                MountMarkSlips.of(fitted.card(), fitted.tip(), fitted.way(), scene.beltMarks(), side),
                                own -> Optional.of(own.length(
                                                Part.path(BELT_MARK, side.id()),
                                                scene.beltMarks().on(side))
                                        .plus(fitted.offset()))))
                        .toList(),
                marks.steps());
    }

    private Part pole(CupScene scene) {
        Length blade = scene.mounting().blade();
        Length span = scene.mounting().card().blade().span(blade);
        Solution<PreciseLength> gap = SlopingBelt.levelAgainstTilt(blade, scene.tilt());
        Length overSpan =
                SlopingBelt.levelAgainstTilt(span, scene.tilt()).result().toLength();
        List<Slip> slips = List.of(
                new Slip("half-the-blade", gap.result().toLength().times(0.5)),
                new Slip("degrees-as-percent", blade.times(scene.tilt().degrees() / 100)),
                new Slip("span-for-blade", overSpan));
        return new Part(
                "cup-pole-level",
                List.of(new Given("cup-tilt", scene.tilt())),
                List.of(
                        new ChoiceBlank(
                                "set",
                                List.of("pole-along-belt", "pole-to-gravity", "pole-between-brackets"),
                                "pole-along-belt",
                                Map.of(
                                        "pole-to-gravity", "bubble-centred",
                                        "pole-between-brackets", "levelled-across")),
                        new LengthBlank(
                                "gap", gap.result().toLength(), READING, ranges.span("gap"), slips, Carry.none())),
                gap.steps());
    }
}
