package beltmark.core.problem.bank.kit;

import beltmark.core.problem.Carry;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.MountMarkSlips;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Tip;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Step;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Turning a tensioner over: the order its parts then go in, and where its datum edge goes now. */
public final class TurningOver implements Recipe {

    private static final Length READING = Graduation.THIRTY_SECOND_INCH.step();

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public TurningOver(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        List.of("beltMark", "outOfLevel").forEach(ranges::length);
        ranges.span("tape");
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Tip tip = draw.oneOf(List.of(Tip.values()));
        Orientation now = draw.oneOf(List.of(Orientation.values()));
        Length left = draw.length(ranges.length("beltMark"));
        Length apart = draw.length(ranges.length("outOfLevel"));
        Sides beltMarks = new Sides(left, left.plus(draw.below(2) == 0 ? apart : apart.negated()));
        TurningScene scene = new TurningScene(card, tip, now, beltMarks);
        return Optional.of(new Posed(
                scene,
                List.of(
                        new Given("card", new Word("hardware.name." + card.id())),
                        new Given("turning-before", now.turnedOver().word()),
                        new Given("turning-now", now.word())),
                List.of(order(scene, draw.shuffled(PartsOrder.of(now))), mark(scene))));
    }

    private static Part order(TurningScene scene, List<String> shown) {
        return new Part(
                "turning-order",
                List.of(),
                List.of(PartsOrder.blank("order", shown, scene.now())),
                List.of(Step.of(
                        "turning-order-" + scene.now().id(),
                        "orientation",
                        scene.now().word())));
    }

    private Part mark(TurningScene scene) {
        List<Given> givens = new ArrayList<>();
        givens.add(new Given("tip", scene.tip().word()));
        givens.add(new Given("belt-mark-left", scene.beltMarks().left()));
        givens.add(new Given("belt-mark-right", scene.beltMarks().right()));
        for (Tip tip : Tip.values()) {
            for (Orientation way : Orientation.values()) {
                givens.add(new Given(
                        "offset-" + tip.id() + "-" + way.id(), scene.card().mountOffset(tip, way)));
            }
        }
        return new Part(
                "turning-mark",
                givens,
                Stream.of(Side.values()).map(side -> blank(scene, side)).toList(),
                scene.mountMarks().steps());
    }

    private LengthBlank blank(TurningScene scene, Side side) {
        List<Slip> slips =
                new ArrayList<>(MountMarkSlips.of(scene.card(), scene.tip(), scene.now(), scene.beltMarks(), side));
        Length right = scene.mountMarks().heights().on(side);
        slips.add(new Slip(
                "from-old-mark",
                right.plus(scene.card().mountOffset(scene.tip(), scene.now().turnedOver()))));
        return new LengthBlank(side.id(), right, READING, ranges.span("tape"), slips, Carry.none());
    }
}
