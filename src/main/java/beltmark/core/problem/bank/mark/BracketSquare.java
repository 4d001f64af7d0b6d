package beltmark.core.problem.bank.mark;

import beltmark.core.geometry.Diagonals;
import beltmark.core.geometry.Skew;
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
import beltmark.core.setup.Tip;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Solution;
import beltmark.core.units.Angle;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A bracket square to the belt and not plumb, marks square across by their diagonals, and what a skew does. */
public final class BracketSquare implements Recipe {

    private static final Length READING = BeltMarkCup.READING;
    private static final String DIAGONALS = "bracket-diagonals";

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Draws from these ranges and cards; throws {@link IllegalArgumentException} when a range is missing. */
    public BracketSquare(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = cards;
        Stream.of("bolts", "along", "out").forEach(ranges::length);
        ranges.number("slope");
        ranges.span("shift");
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Length blade = draw.oneOf(card.tip(Tip.CARBIDE).chart()).blade();
        Angle slope = Angle.ofDegrees(draw.number(ranges.number("slope")));
        Length bolts = draw.length(ranges.length("bolts"));
        boolean upperRight = draw.below(2) == 0;
        Length along = draw.length(ranges.length("along"));
        Length out = MountingDraw.eitherWay(draw, draw.length(ranges.length("out")));
        BracketScene.Marks marks = marks(along, card.blade().span(blade), out);
        BracketScene scene = new BracketScene(card, blade, slope, bolts, upperRight, marks);
        List<Given> givens = List.of(
                new Given("card", new Word("hardware.name." + card.id())),
                new Given("blade", blade),
                new Given("bracket-span", scene.span()));
        return Optional.of(new Posed(scene, givens, List.of(bolt(scene), diagonals(scene), lead(scene))));
    }

    /** The diagonals as a tape in sixteenths gives them, so that everybody reckons with the same figures. */
    private static BracketScene.Marks marks(Length along, Length span, Length out) {
        double first = Math.hypot(span.millimetres(), along.plus(out).millimetres());
        double second = Math.hypot(span.millimetres(), along.minus(out).millimetres());
        return new BracketScene.Marks(along, read(first), read(second));
    }

    private static Length read(double millimetres) {
        return Length.ofMillimetres(millimetres).roundedTo(Graduation.SIXTEENTH_INCH);
    }

    private Part bolt(BracketScene scene) {
        Solution<SlopingBelt> belt = SlopingBelt.of(scene.bolts(), scene.slope());
        String right = scene.upperRight() ? "lower-bolt-up-slope" : "upper-bolt-down-slope";
        String wrongWay = scene.upperRight() ? "lower-bolt-down-slope" : "upper-bolt-up-slope";
        List<Slip> slips = List.of(
                new Slip("cosine-for-tangent", belt.result().gotIfPlumb().toLength()),
                new Slip("degrees-as-percent", scene.bolts().times(scene.slope().degrees() / 100)),
                new Slip("half-the-move", belt.result().shiftAlong().toLength().times(0.5)));
        ChoiceBlank which = new ChoiceBlank(
                "which",
                List.of(
                        "upper-bolt-up-slope",
                        "upper-bolt-down-slope",
                        "lower-bolt-up-slope",
                        "lower-bolt-down-slope",
                        "bracket-stays-plumb"),
                right,
                Map.of(wrongWay, "wrong-way", "bracket-stays-plumb", "plumb-for-square"));
        LengthBlank by = new LengthBlank(
                "by", belt.result().shiftAlong().toLength(), READING, ranges.span("shift"), slips, Carry.none());
        List<Given> givens = List.of(
                new Given("bracket-slope", scene.slope()),
                new Given("bracket-bolts", scene.bolts()),
                new Given(
                        "bracket-on-mark",
                        new Word("problem.option." + (scene.upperRight() ? "upper-bolt" : "lower-bolt"))));
        return new Part("bracket-bolt", givens, List.of(which, by), belt.steps().subList(1, 2));
    }

    private static Solution<Diagonals> found(BracketScene scene) {
        BracketScene.Marks marks = scene.marks();
        return Diagonals.of(marks.first(), marks.second(), marks.along());
    }

    private Part diagonals(BracketScene scene) {
        BracketScene.Marks marks = scene.marks();
        Solution<Diagonals> found = found(scene);
        Length signed = found.result().outOfSquare().toLength();
        String right = signed.isNegative() ? "left-side-ahead" : "right-side-ahead";
        String other = signed.isNegative() ? "right-side-ahead" : "left-side-ahead";
        Length difference = marks.first().minus(marks.second()).abs();
        List<Slip> slips = List.of(
                new Slip("difference-itself", difference),
                new Slip("half-the-difference", difference.times(0.5)),
                new Slip("divided-by-two", signed.abs().times(2)));
        ChoiceBlank ahead = new ChoiceBlank(
                "ahead",
                List.of("left-side-ahead", "right-side-ahead", "marks-square"),
                right,
                Map.of(other, "shorter-diagonal", "marks-square", "diagonals-not-compared"));
        LengthBlank out = new LengthBlank("out", signed.abs(), READING, ranges.span("shift"), slips, Carry.none());
        List<Given> givens = List.of(
                new Given("bracket-along", marks.along()),
                new Given("bracket-first-diagonal", marks.first()),
                new Given("bracket-second-diagonal", marks.second()));
        return new Part(DIAGONALS, givens, List.of(ahead, out), found.steps());
    }

    private Part lead(BracketScene scene) {
        Length out = found(scene).result().outOfSquare().toLength().abs();
        Solution<Skew> skew = Skew.of(out, scene.span(), scene.blade());
        Length right = skew.result().lead().toLength();
        List<Slip> slips = List.of(
                new Slip("out-itself", out),
                new Slip(
                        "blade-for-span",
                        out.times(scene.span().millimetres() / scene.blade().millimetres())),
                new Slip("half-the-lead", right.times(0.5)));
        LengthBlank lead = new LengthBlank(
                "lead",
                right,
                READING,
                ranges.span("shift"),
                slips,
                own -> Optional.of(Skew.of(own.length(Part.path(DIAGONALS, "out"), out), scene.span(), scene.blade())
                        .result()
                        .lead()
                        .toLength()));
        return new Part("bracket-lead", List.of(), List.of(lead), skew.steps().subList(0, 2));
    }
}
