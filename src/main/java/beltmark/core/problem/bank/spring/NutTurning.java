package beltmark.core.problem.bank.spring;

import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthRange;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Sides;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** How far to turn the nut on each side so that both springs come to the wanted length. */
public final class NutTurning implements Recipe {

    /** Usual inch threads of rods, per inch; common sizes of the trade, from memory. */
    private static final List<Integer> PER_INCH = List.of(8, 9, 10, 11);

    private static final Length LEAST_CHANGE = Length.ofSixteenths(3);
    private static final Length MOST_CHANGE = Length.ofSixteenths(14);

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;
    private final LengthRange settings;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public NutTurning(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        this.settings = ranges.length("setting");
        NutParts.check(ranges);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Length wanted = draw.length(settings);
        List<Length> starts = starts(wanted);
        Sides present = new Sides(draw.oneOf(starts), draw.oneOf(starts));
        int perInch = draw.oneOf(PER_INCH);
        boolean inch = draw.below(2) == 0;
        NutScene.RodThread thread = inch
                ? new NutScene.RodThread(Length.ofNanometres(LengthUnit.INCH.nanometres() / perInch), perInch)
                : new NutScene.RodThread(card.pole().nutPitch(), 0);
        return present.left().equals(present.right())
                ? Optional.empty()
                : Optional.of(posed(new NutScene(card, present, wanted, thread)));
    }

    private List<Length> starts(Length wanted) {
        return IntStream.range(0, settings.steps())
                .mapToObj(settings::at)
                .filter(length -> isChange(length.minus(wanted).abs()))
                .toList();
    }

    private static boolean isChange(Length change) {
        return change.compareTo(LEAST_CHANGE) >= 0 && change.compareTo(MOST_CHANGE) <= 0;
    }

    private Posed posed(NutScene scene) {
        NutParts parts = new NutParts(scene, ranges);
        return new Posed(
                scene,
                List.of(
                        new Given(
                                "card", new Word("hardware.name." + scene.card().id())),
                        new Given("nut-present-left", scene.present().left()),
                        new Given("nut-present-right", scene.present().right()),
                        new Given("nut-wanted", scene.wanted())),
                List.of(parts.way(), parts.change(), parts.turns(), parts.order()));
    }
}
