package beltmark.core.problem.bank.mark;

import beltmark.core.measure.InchSum;
import beltmark.core.problem.Carry;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.LengthRange;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Solution;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import java.util.List;
import java.util.Optional;

/** Adding an offset to a mark, going down from one, and finding the middle of a width, in inches and sixteenths. */
public final class FractionSums implements Recipe {

    private static final Length READING = Graduation.THIRTY_SECOND_INCH.step();

    private final LengthRange mark;
    private final LengthRange offset;
    private final LengthRange drop;
    private final LengthRange width;
    private final LengthSpan heights;
    private final LengthSpan halves;

    /** Reads the ranges of the family; no hardware plays a part. */
    public FractionSums(FamilyRanges ranges, List<HardwareCard> cards) {
        mark = ranges.length("mark");
        offset = ranges.length("offset");
        drop = ranges.length("drop");
        width = ranges.length("width");
        heights = ranges.span("height");
        halves = ranges.span("half");
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        FractionScene scene = new FractionScene(
                draw.length(mark), draw.length(offset), draw.length(mark), draw.length(drop), draw.length(width));
        boolean anyWhole =
                List.of(scene.beltMark(), scene.offset(), scene.upper(), scene.drop(), scene.width()).stream()
                        .anyMatch(length -> InchFraction.of(length).isWhole());
        if (anyWhole) {
            return Optional.empty();
        }
        return Optional.of(new Posed(scene, List.of(), List.of(sum(scene), difference(scene), half(scene))));
    }

    private Part sum(FractionScene scene) {
        return part(
                "fraction-sum",
                List.of(
                        new Given("fraction-belt-mark", FractionScene.inches(scene.beltMark())),
                        new Given("fraction-offset", FractionScene.inches(scene.offset()))),
                InchSum.plus(scene.beltMark(), scene.offset()),
                heights,
                FractionSlips.sum(scene.beltMark(), scene.offset()));
    }

    private Part difference(FractionScene scene) {
        return part(
                "fraction-difference",
                List.of(
                        new Given("fraction-upper", FractionScene.inches(scene.upper())),
                        new Given("fraction-drop", FractionScene.inches(scene.drop()))),
                InchSum.minus(scene.upper(), scene.drop()),
                heights,
                FractionSlips.difference(scene.upper(), scene.drop()));
    }

    private Part half(FractionScene scene) {
        return part(
                "fraction-half",
                List.of(new Given("fraction-width", FractionScene.inches(scene.width()))),
                InchSum.half(scene.width()),
                halves,
                FractionSlips.half(scene.width()));
    }

    private static Part part(
            String id, List<Given> givens, Solution<Length> right, LengthSpan plausible, List<Slip> slips) {
        LengthBlank blank = new LengthBlank("inches", right.result(), READING, plausible, slips, Carry.none());
        return new Part(id, givens, List.of(blank), right.steps());
    }
}
