package beltmark.core.setup;

import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which way round the tensioner goes. Common practice, no published source: as delivered (overslung) whenever that fits
 * with the card's clearance, turned over (underslung) when only that fits, and not here at all when neither does.
 *
 * @param clearance the least gap the card asks for
 * @param overslungGap the least gap when mounted overslung; negative when it does not fit
 * @param underslungGap the same when mounted underslung
 */
public record OrientationChoice(Length clearance, Length overslungGap, Length underslungGap) {

    /** {@return the choice for a card and tip in given surroundings} */
    public static OrientationChoice of(HardwareCard card, Tip tip, Surroundings surroundings) {
        return new OrientationChoice(
                card.clearance(),
                surroundings.leastGap(card.reachFromBeltMark(tip, Orientation.OVERSLUNG)),
                surroundings.leastGap(card.reachFromBeltMark(tip, Orientation.UNDERSLUNG)));
    }

    /** {@return the orientation to mount, or empty when neither fits} */
    public Optional<Orientation> chosen() {
        if (fits(Orientation.OVERSLUNG)) {
            return Optional.of(Orientation.OVERSLUNG);
        }
        return fits(Orientation.UNDERSLUNG) ? Optional.of(Orientation.UNDERSLUNG) : Optional.empty();
    }

    /** {@return the least gap of an orientation; negative when it does not fit} */
    public Length gap(Orientation orientation) {
        return orientation == Orientation.OVERSLUNG ? overslungGap : underslungGap;
    }

    /** {@return whether an orientation leaves at least the card's clearance} */
    public boolean fits(Orientation orientation) {
        return gap(orientation).compareTo(clearance) >= 0;
    }

    /** {@return how much clearance the better of the two orientations lacks; zero when one fits} */
    public Length shortBy() {
        Length better = Length.max(overslungGap, underslungGap);
        return Length.max(Length.ZERO, clearance.minus(better));
    }

    /** {@return the steps that lead to the choice} */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        steps.add(gapStep(Orientation.OVERSLUNG));
        if (!fits(Orientation.OVERSLUNG)) {
            steps.add(gapStep(Orientation.UNDERSLUNG));
        }
        steps.add(chosen().map(orientation -> Step.of("orientation-chosen", "orientation", orientation.word()))
                .orElseGet(() -> Step.of("orientation-none", "shortBy", shortBy())));
        return steps;
    }

    private Step gapStep(Orientation orientation) {
        String id = fits(orientation) ? "orientation-gap-enough" : "orientation-gap-short";
        return Step.of(id, "orientation", orientation.word())
                .with("clearance", clearance)
                .with("gap", gap(orientation));
    }
}
