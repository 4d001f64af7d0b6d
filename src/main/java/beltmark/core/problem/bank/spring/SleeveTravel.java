package beltmark.core.problem.bank.spring;

import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Recipe;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;
import beltmark.core.setup.TipCard;
import beltmark.core.units.Length;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Optional;

/** How far a cleaner can drop, what ends the drop, and whether the splice passes. */
public final class SleeveTravel implements Recipe {

    /** Nothing is drawn nearer to a tie of sleeve and coils, or to a splice that just passes. */
    private static final Length LEAST_DOUBT = Length.ofMillimetres(2);

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public SleeveTravel(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        List.of("tightened", "mountedOff", "wear", "splice").forEach(ranges::length);
        TravelParts.check(ranges);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        TipCard.Setting row =
                draw.oneOf(card.tip(draw.oneOf(List.of(Tip.values()))).chart());
        Length off = draw.length(ranges.length("mountedOff"));
        TravelScene scene = new TravelScene(
                card,
                row.blade(),
                row.springLength().minus(draw.length(ranges.length("tightened"))),
                draw.below(2) == 0 ? off : off.negated(),
                draw.length(ranges.length("wear")),
                draw.length(ranges.length("splice")));
        return isAsked(scene) ? Optional.of(posed(scene)) : Optional.empty();
    }

    private static boolean isAsked(TravelScene scene) {
        try {
            Length apart = scene.springTravel().minus(scene.sleeve().result()).abs();
            return apart.compareTo(LEAST_DOUBT) > 0
                    && scene.margin().abs().compareTo(LEAST_DOUBT) > 0
                    && !scene.springTravel().isNegative();
        } catch (Refused boundOrLoose) {
            return false;
        }
    }

    private Posed posed(TravelScene scene) {
        TravelParts parts = new TravelParts(scene, ranges);
        return new Posed(
                scene,
                List.of(new Given(
                        "card", new Word("hardware.name." + scene.card().id()))),
                List.of(parts.sleeve(), parts.coils(), parts.limit(), parts.splice()));
    }
}
