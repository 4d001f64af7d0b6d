package beltmark.core.setup;

import beltmark.core.units.Length;

/**
 * One place on one conveyor with one cleaner to fit: everything that a set-up is computed from.
 *
 * @param card the hardware
 * @param tip the tip on the blade
 * @param blade the length of the blade, one of the chart's
 * @param beltMarks the belt marks, above the foot of the tape
 * @param surroundings what limits the space, from the belt mark
 * @param mountedHigh how far above its mount mark the tensioner was fixed; negative when below
 * @param splice the height of the tallest splice in the belt
 */
public record Situation(
        HardwareCard card,
        Tip tip,
        Length blade,
        Sides beltMarks,
        Surroundings surroundings,
        Length mountedHigh,
        Length splice) {

    /** {@return which way round the tensioner goes here} */
    public OrientationChoice orientation() {
        return OrientationChoice.of(card, tip, surroundings);
    }

    /** {@return where the datum edges go when mounted that way round} */
    public MountMarks mountMarks(Orientation orientation) {
        return new MountMarks(beltMarks, card.mountOffset(tip, orientation));
    }

    /** {@return the spring length from the chart; throws when the chart has no such blade} */
    public SpringSetting springSetting() {
        return SpringSetting.fromChart(card, tip, blade)
                .orElseThrow(() -> new IllegalArgumentException("card " + card.id() + " has no blade of " + blade));
    }

    /** {@return how much sleeve shows} */
    public SleeveExposure sleeve() {
        return new SleeveExposure(card.sleeve(), mountedHigh, splice);
    }
}
