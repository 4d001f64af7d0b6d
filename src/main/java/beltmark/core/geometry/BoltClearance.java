package beltmark.core.geometry;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.PreciseLength;

/**
 * The gap between a round bolt head and an upright rectangular plate, seen from the side: hypot(max(|dx| - w/2, 0),
 * max(|dz| - h/2, 0)) - r, with the bolt dx along and dz above the middle of a plate w wide and h high. Own derivation.
 */
public final class BoltClearance {

    private BoltClearance() {}

    /**
     * A plate, seen from the side.
     *
     * @param width along the belt w, above 0
     * @param height h, above 0
     */
    public record Plate(Length width, Length height) {

        public Plate {
            Limits.positive("plateWidth", width);
            Limits.positive("plateHeight", height);
        }
    }

    /**
     * Finds the gap.
     *
     * @param along how far along the belt the bolt is from the middle of the plate dx
     * @param above how far above the middle of the plate it is dz
     * @param plate the plate
     * @param headRadius half the largest width of the bolt head r, above 0
     * @return the gap, not negative
     * @throws Refused BOLT_IN_PLATE, OUT_OF_RANGE
     */
    public static Solution<PreciseLength> of(Length along, Length above, Plate plate, Length headRadius) {
        Limits.signed("along", along);
        Limits.signed("above", above);
        Limits.positive("headRadius", headRadius);
        double beside = outside(along, plate.width);
        double over = outside(above, plate.height);
        double gap = Math.hypot(beside, over) - headRadius.millimetres();
        if (Limits.isBelow(gap, 0)) {
            throw Refused.because(Refusal.BOLT_IN_PLATE).with("overlap", new PreciseLength(-gap));
        }
        PreciseLength clearance = new PreciseLength(Math.max(0, gap));
        return Solution.of(
                clearance,
                Step.of("bolt-outside-plate", "along", along)
                        .with("above", above)
                        .with("beside", new PreciseLength(beside))
                        .with("over", new PreciseLength(over)),
                Step.of("bolt-clearance", "headRadius", headRadius).with("clearance", clearance));
    }

    private static double outside(Length off, Length size) {
        return Math.max(Math.abs(off.millimetres()) - size.millimetres() / 2, 0);
    }
}
