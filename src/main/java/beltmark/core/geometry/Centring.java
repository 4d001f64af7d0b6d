package beltmark.core.geometry;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;

/**
 * Where the blade is between the walls and on the belt. From the left wall to the blade: inside/2 + belt offset + blade
 * offset - b/2, from the right wall with the signs of both offsets turned; to the edge of the belt at least (B - b)/2 -
 * |blade offset| - mistracking. Own derivation.
 *
 * @param leftWall from the left wall to the blade, not negative
 * @param rightWall from the right wall to the blade, not negative
 * @param edgeMargin the least distance from an end of the blade to the edge of the belt; negative when it runs off
 */
public record Centring(Length leftWall, Length rightWall, Length edgeMargin) {

    /**
     * The widths.
     *
     * @param inside between the walls, above 0
     * @param belt the width of the belt B, above 0
     * @param blade the length of the blade b, above 0, not above B
     */
    public record Widths(Length inside, Length belt, Length blade) {

        public Widths {
            Limits.positive("inside", inside);
            Limits.positive("belt", belt);
            Limits.positive("blade", blade);
            if (blade.compareTo(belt) > 0) {
                throw Refused.because(Refusal.BLADE_WIDER_THAN_BELT)
                        .with("blade", blade)
                        .with("belt", belt);
            }
        }
    }

    /**
     * Finds the distances.
     *
     * @param widths the widths
     * @param beltOffset how far right of the middle between the walls the belt runs
     * @param bladeOffset how far right of the middle of the belt the blade is
     * @param mistracking how far the belt wanders to either side, not negative
     * @return the distances; with NEGATIVE_EDGE_MARGIN, BELT_TOUCHES_STRUCTURE where they apply
     * @throws Refused BLADE_WIDER_THAN_BELT, BLADE_IN_WALL, OUT_OF_RANGE
     */
    public static Solution<Centring> of(Widths widths, Length beltOffset, Length bladeOffset, Length mistracking) {
        Limits.signed("beltOffset", beltOffset);
        Limits.signed("bladeOffset", bladeOffset);
        Limits.notNegative("mistracking", mistracking);
        Length spare = widths.inside.minus(widths.blade).times(0.5);
        Length offset = beltOffset.plus(bladeOffset);
        Length margin = widths.belt
                .minus(widths.blade)
                .times(0.5)
                .minus(bladeOffset.abs())
                .minus(mistracking);
        Centring centring = new Centring(spare.plus(offset), spare.minus(offset), margin);
        Length least = Length.min(centring.leftWall, centring.rightWall);
        if (least.isNegative()) {
            throw Refused.because(Refusal.BLADE_IN_WALL).with("overlap", least.negated());
        }
        Length besideBelt = widths.inside.minus(widths.belt).times(0.5);
        boolean touches = besideBelt.compareTo(beltOffset.abs().plus(mistracking)) < 0;
        return Solution.of(centring, steps(centring, widths, offset, bladeOffset, mistracking))
                .warnIf(margin.isNegative(), Warning.NEGATIVE_EDGE_MARGIN)
                .warnIf(touches, Warning.BELT_TOUCHES_STRUCTURE);
    }

    private static Step[] steps(
            Centring centring, Widths widths, Length offset, Length bladeOffset, Length mistracking) {
        return new Step[] {
            Step.of("wall-to-blade", "inside", widths.inside)
                    .with("blade", widths.blade)
                    .with("offset", offset)
                    .with("left", centring.leftWall)
                    .with("right", centring.rightWall),
            Step.of("edge-margin", "belt", widths.belt)
                    .with("blade", widths.blade)
                    .with("bladeOffset", bladeOffset)
                    .with("mistracking", mistracking)
                    .with("margin", centring.edgeMargin)
        };
    }
}
