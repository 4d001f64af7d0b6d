package beltmark.core.setup;

import beltmark.core.geometry.Exposure;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import java.util.List;
import java.util.stream.Stream;

/**
 * How much sleeve shows below the bushing, which is how far the cleaner can still drop for a splice. The sleeve is taken
 * as fixed to the mounting base and the bushing as moving with the pole (a modelling assumption): a tensioner mounted
 * high by e shows e less, and a splice of height h takes h of what shows.
 *
 * @param asSet the sleeve the card wants to show when everything is on its mark
 * @param mountedHigh how far above its mount mark the tensioner was fixed; negative when below
 * @param splice the height of the tallest splice, not negative
 */
public record SleeveExposure(Length asSet, Length mountedHigh, Length splice) {

    /** {@return the sleeve showing while the belt runs; throws {@link Refused} NO_SLEEVE_LEFT where the bushing is off it} */
    public Length atRest() {
        return Exposure.after(asSet, mountedHigh, Length.ZERO, Length.ZERO).result();
    }

    /** {@return the sleeve still showing while the splice passes; throws {@link Refused} where it bottoms out} */
    public Length overSplice() {
        return Exposure.after(asSet, mountedHigh, Length.ZERO, splice).result();
    }

    /** {@return whether the tensioner is on its mount mark, so that nothing comes of it} */
    public boolean isOnMark() {
        return mountedHigh.equals(Length.ZERO);
    }

    /** {@return the steps that lead to both} */
    public List<Step> steps() {
        return Stream.of(stepsAtRest(), stepsOverSplice()).flatMap(List::stream).toList();
    }

    /** {@return the steps to the sleeve showing while the belt runs; none when mounted on the mark} */
    public List<Step> stepsAtRest() {
        String id = mountedHigh.isNegative() ? "sleeve-mounted-low" : "sleeve-mounted-high";
        return isOnMark()
                ? List.of()
                : List.of(Step.of(id, "asSet", asSet)
                        .with("off", mountedHigh.abs())
                        .with("atRest", atRest()));
    }

    /** {@return the steps from there to the sleeve still showing while the splice passes} */
    public List<Step> stepsOverSplice() {
        return List.of(Step.of("sleeve-over-splice", "atRest", atRest())
                .with("splice", splice)
                .with("overSplice", overSplice()));
    }
}
