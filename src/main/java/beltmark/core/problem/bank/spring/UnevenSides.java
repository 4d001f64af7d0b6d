package beltmark.core.problem.bank.spring;

import beltmark.core.blade.EdgeLoads;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Recipe;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the two ends of a blade feel when the springs push unevenly or the blade sits off the middle. */
public final class UnevenSides implements Recipe {

    /** No load is drawn nearer to the middle, or nearer to the end, than these shares of the blade. */
    private static final double LEAST_LEVER = 0.015;

    private static final double MOST_LEVER = 0.42;
    private static final double MIDDLE_THIRD = 1.0 / 6;
    /** Nor as near as this to where an end begins to lift. */
    private static final double DOUBT = 0.01;
    /** Forces are drawn in steps that read nearly the same in newtons and in pounds. */
    private static final double FORCE_STEP = 10;

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public UnevenSides(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        ranges.length("offCentre");
        ranges.number("lineLoad");
        ranges.number("difference");
        UnevenParts.check(ranges);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Length blade =
                draw.oneOf(card.tip(draw.oneOf(List.of(Tip.values()))).chart()).blade();
        Force weight = stepped(card.blade().moving(blade).weight().newtons());
        double load = draw.number(ranges.number("lineLoad")) * blade.millimetres();
        double difference = draw.number(ranges.number("difference")) * load;
        double sign = draw.below(2) == 0 ? 1 : -1;
        double each = (load + weight.newtons()) / 2;
        Length off = draw.length(ranges.length("offCentre"));
        int place = draw.below(3);
        Length offCentre = place == 0 ? Length.ZERO : place == 1 ? off : off.negated();
        EdgeLoads.Layout layout = new EdgeLoads.Layout(card.blade().span(blade), blade, offCentre, Length.ZERO);
        UnevenScene scene = new UnevenScene(
                card, stepped(each - sign * difference / 2), stepped(each + sign * difference / 2), weight, layout);
        return isAsked(scene) ? Optional.of(posed(scene)) : Optional.empty();
    }

    private static Force stepped(double newtons) {
        return new Force(Math.rint(newtons / FORCE_STEP) * FORCE_STEP);
    }

    private static boolean isAsked(UnevenScene scene) {
        try {
            double blade = scene.layout().blade().millimetres();
            double lever = Math.abs(scene.ends().result().eccentricity().millimetres()) / blade;
            return lever > LEAST_LEVER && lever < MOST_LEVER && Math.abs(lever - MIDDLE_THIRD) > DOUBT;
        } catch (Refused tipsOver) {
            return false;
        }
    }

    private Posed posed(UnevenScene scene) {
        UnevenParts parts = new UnevenParts(scene, ranges);
        Length off = scene.layout().bladeOffCentre();
        List<Given> givens = new ArrayList<>(List.of(
                new Given("card", new Word("hardware.name." + scene.card().id())),
                new Given("uneven-left", scene.left()),
                new Given("uneven-right", scene.right()),
                new Given("uneven-weight", scene.weight()),
                new Given("uneven-span", scene.layout().span()),
                new Given("blade", scene.layout().blade())));
        if (!off.equals(Length.ZERO)) {
            givens.add(new Given(off.isNegative() ? "uneven-off-left" : "uneven-off-right", off.abs()));
        }
        return new Posed(scene, givens, List.of(parts.load(), parts.lever(), parts.heavy(), parts.ends()));
    }
}
