package beltmark.core.blade;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/**
 * Between which loads friction in the guide lets the blade rest. Drag acts a distance a beyond a bushing of length l, so the
 * rubbing against any movement is f N with f = mu mu_b (1 + 2 a/l): N is between net/(1 + f), following the belt up, and
 * net/(1 - f), being pushed down. Own derivation; this is what a bounce by hand really tests.
 *
 * @param friction f, below 1
 * @param low the least load
 * @param high the largest load
 */
public record BushingBand(Ratio friction, Force low, Force high) {

    /**
     * The guide.
     *
     * @param onBelt friction of the blade on the belt mu, not negative
     * @param inBushing friction in the bushing mu_b, not negative
     * @param overhang from the bushing to where the drag acts a, not negative
     * @param bushing the length of the bushing l, above 0
     */
    public record Guide(Ratio onBelt, Ratio inBushing, Length overhang, Length bushing) {

        public Guide {
            Drag.checked(onBelt);
            Drag.checked(inBushing);
            Limits.notNegative("overhang", overhang);
            Limits.positive("bushing", bushing);
        }
    }

    /**
     * Finds the band.
     *
     * @param net what the springs press with, less the weight, above 0
     * @param guide the guide
     * @throws Refused JAM when f is 1 or more, OUT_OF_RANGE
     */
    public static Solution<BushingBand> of(Force net, Guide guide) {
        Limits.positive("net", net);
        double lever = 1 + 2 * guide.overhang.millimetres() / guide.bushing.millimetres();
        Ratio friction = new Ratio(guide.onBelt.value() * guide.inBushing.value() * lever);
        if (!Limits.isBelow(friction.value(), 1)) {
            throw Refused.because(Refusal.JAM).with("friction", friction);
        }
        BushingBand band =
                new BushingBand(friction, net.times(1 / (1 + friction.value())), net.times(1 / (1 - friction.value())));
        return Solution.of(
                band,
                Step.of("bushing-friction", "overhang", guide.overhang)
                        .with("bushing", guide.bushing)
                        .with("friction", friction),
                Step.of("bushing-band", "net", net)
                        .with("friction", friction)
                        .with("low", band.low)
                        .with("high", band.high));
    }
}
