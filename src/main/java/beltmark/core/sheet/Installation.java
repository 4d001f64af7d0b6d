package beltmark.core.sheet;

import beltmark.core.blade.Assembly;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Situation;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Speed;

/**
 * One cleaner to be fitted at one place, as measured at the conveyor. Nothing is checked here: each number is refused
 * where it makes something impossible.
 *
 * @param situation hardware, tip, blade, belt marks, what is around, and the tallest splice
 * @param slope of the return belt at the cleaner, 0..89 degrees
 * @param belt the width of the belt, above 0
 * @param inside the width between the walls, above 0
 * @param outside the outside width of the structure, above 0
 * @param mistracking how far the belt wanders to either side, not negative
 * @param beltSpeed the speed of the belt, not negative
 */
public record Installation(
        Situation situation,
        Angle slope,
        Length belt,
        Length inside,
        Length outside,
        Length mistracking,
        Speed beltSpeed) {

    /** {@return the hardware} */
    public HardwareCard card() {
        return situation.card();
    }

    /** {@return the length of the blade} */
    public Length blade() {
        return situation.blade();
    }

    /**
     * {@return what the springs carry}
     *
     * @throws Refused OUT_OF_RANGE for a slope or a blade that cannot be
     */
    public Assembly assembly() {
        return new Assembly(card().blade().moving(blade()), slope, blade());
    }
}
