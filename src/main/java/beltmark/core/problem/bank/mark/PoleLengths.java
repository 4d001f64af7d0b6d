package beltmark.core.problem.bank.mark;

import beltmark.core.geometry.Centring;
import beltmark.core.geometry.PoleLength;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.PoleCard;
import beltmark.core.setup.Tip;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Solution;
import beltmark.core.units.Length;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** How long the pole is cut, where the blade goes between the walls, and whether it stays on a wandering belt. */
public final class PoleLengths implements Recipe {

    /** A pole is cut to an eighth: brackets and overhang are given in millimetres and read in sixteenths. */
    private static final Length CUT = Length.ofSixteenths(2);

    /** Half a sixteenth each of the two widths that are subtracted. */
    private static final Length PLACED = Length.ofSixteenths(1);

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Draws from these ranges and cards; throws {@link IllegalArgumentException} when a range is missing. */
    public PoleLengths(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = cards;
        Stream.of("beltBeyondBlade", "insideBeyondBelt", "wall", "beltOffset", "bladeOffset", "mistracking")
                .forEach(ranges::length);
        Stream.of("pole", "wall", "margin").forEach(ranges::span);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Length blade = draw.oneOf(card.tip(Tip.CARBIDE).chart()).blade();
        Length belt = blade.plus(draw.length(ranges.length("beltBeyondBlade")));
        Length inside = belt.plus(draw.length(ranges.length("insideBeyondBelt")));
        Length outside = inside.plus(draw.length(ranges.length("wall")).times(2));
        PoleScene.Offsets offsets = new PoleScene.Offsets(
                MountingDraw.eitherWay(draw, draw.length(ranges.length("beltOffset"))),
                MountingDraw.eitherWay(draw, draw.length(ranges.length("bladeOffset"))),
                draw.length(ranges.length("mistracking")));
        // between belt and wall there must be room for what the belt runs off centre and wanders
        Length beside = inside.minus(belt).times(0.5);
        if (beside.compareTo(offsets.belt().abs().plus(offsets.mistracking())) < 0) {
            return Optional.empty();
        }
        PoleScene scene = new PoleScene(card, new Centring.Widths(inside, belt, blade), outside, offsets);
        List<Given> givens = List.of(
                new Given("card", new Word("hardware.name." + card.id())),
                new Given("blade", blade),
                new Given("pole-belt-width", belt),
                new Given("pole-inside", inside),
                new Given("pole-outside", outside));
        return Optional.of(new Posed(scene, givens, List.of(cut(scene), centre(scene), margin(scene))));
    }

    private Part cut(PoleScene scene) {
        PoleCard card = scene.card().pole();
        Solution<Length> pole = PoleLength.of(scene.outside(), card.bracket(), card.overhang());
        Length inside = scene.widths().inside();
        List<Slip> slips = List.of(
                new Slip("one-side-only", scene.outside().plus(card.bracket()).plus(card.overhang())),
                new Slip("overhang-forgotten", pole(scene.outside(), card.bracket(), Length.ZERO)),
                new Slip("brackets-forgotten", pole(scene.outside(), Length.ZERO, card.overhang())),
                new Slip("inside-for-outside", pole(inside, card.bracket(), card.overhang())));
        LengthBlank blank = new LengthBlank("length", pole.result(), CUT, ranges.span("pole"), slips, Carry.none());
        List<Given> givens =
                List.of(new Given("pole-bracket", card.bracket()), new Given("pole-overhang", card.overhang()));
        return new Part("pole-cut", givens, List.of(blank), pole.steps());
    }

    private static Length pole(Length width, Length bracket, Length overhang) {
        return PoleLength.of(width, bracket, overhang).result();
    }

    private Part centre(PoleScene scene) {
        Length off = scene.offsets().belt();
        Solution<Centring> found = Centring.of(scene.widths(), off, Length.ZERO, Length.ZERO);
        return new Part(
                "pole-centre",
                List.of(new Given(off.isNegative() ? "pole-belt-left" : "pole-belt-right", off.abs())),
                List.of(
                        wall(scene, "left", found.result().leftWall(), off),
                        wall(scene, "right", found.result().rightWall(), off.negated())),
                found.steps().subList(0, 1));
    }

    private LengthBlank wall(PoleScene scene, String id, Length right, Length off) {
        Centring.Widths widths = scene.widths();
        Length middle = right.minus(off);
        List<Slip> slips = List.of(
                new Slip("between-the-walls", middle),
                new Slip("wrong-way", middle.minus(off)),
                new Slip("not-halved", middle.times(2).plus(off)),
                new Slip(
                        "belt-for-blade",
                        widths.inside().minus(widths.belt()).times(0.5).plus(off)));
        return new LengthBlank(id, right, PLACED, ranges.span("wall"), slips, Carry.none());
    }

    private Part margin(PoleScene scene) {
        Centring.Widths widths = scene.widths();
        Length off = scene.offsets().blade();
        Length wander = scene.offsets().mistracking();
        Solution<Centring> found = Centring.of(widths, scene.offsets().belt(), off, wander);
        Length margin = found.result().edgeMargin();
        Length beyond = widths.belt().minus(widths.blade());
        List<Slip> slips = List.of(
                new Slip("mistracking-forgotten", margin.plus(wander).abs()),
                new Slip("offset-forgotten", margin.plus(off.abs()).abs()),
                new Slip("not-halved", margin.plus(beyond.times(0.5)).abs()));
        boolean stays = !margin.isNegative();
        LengthBlank worst = new LengthBlank("worst", margin.abs(), PLACED, ranges.span("margin"), slips, Carry.none());
        ChoiceBlank choice = new ChoiceBlank(
                "stays",
                List.of("blade-stays-on-belt", "blade-runs-off-belt"),
                stays ? "blade-stays-on-belt" : "blade-runs-off-belt",
                stays
                        ? Map.of("blade-runs-off-belt", "runs-off-feared")
                        : Map.of("blade-stays-on-belt", "runs-off-overlooked"));
        List<Given> givens = List.of(
                new Given(off.isNegative() ? "pole-blade-left" : "pole-blade-right", off.abs()),
                new Given("pole-mistracking", wander));
        return new Part(
                "pole-margin", givens, List.of(worst, choice), found.steps().subList(1, 2));
    }
}
