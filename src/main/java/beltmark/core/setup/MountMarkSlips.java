package beltmark.core.setup;

import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;

/** The known wrong ways to come by a mount mark, in a problem and at a conveyor. */
public final class MountMarkSlips {

    private MountMarkSlips() {}

    /**
     * Works the mount mark of one side in every known wrong way.
     *
     * @param card the hardware
     * @param tip the tip on the blade
     * @param orientation which way round the tensioner goes
     * @param beltMarks the belt marks, above the foot of the tape
     * @param side the side
     * @return the slips; one may come out at the right mark, where the sides or the tips happen not to differ
     */
    public static List<Slip> of(HardwareCard card, Tip tip, Orientation orientation, Sides beltMarks, Side side) {
        Length own = beltMarks.on(side);
        Length offset = card.mountOffset(tip, orientation);
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("measured-down", own.minus(offset)));
        slips.add(new Slip("other-orientation", own.plus(card.mountOffset(tip, orientation.turnedOver()))));
        slips.add(new Slip("other-side", beltMarks.on(side.opposite()).plus(offset)));
        slips.add(new Slip("belt-mark-again", own));
        Length otherTip = card.mountOffset(tip.other(), orientation);
        if (!otherTip.equals(offset)) {
            slips.add(new Slip("other-tip", own.plus(otherTip)));
        }
        return slips;
    }
}
