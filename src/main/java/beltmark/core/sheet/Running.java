package beltmark.core.sheet;

import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.BladeWear;
import beltmark.core.blade.Drag;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Length;
import beltmark.core.units.Pressure;
import java.util.List;

/**
 * What the load does while the belt runs.
 *
 * @param pressure of the tip on the belt
 * @param wear after which the springs have to be tensioned again, when four fifths of the load are left
 * @param drag what the cleaner costs the drive
 */
public record Running(Found<Pressure> pressure, Found<Length> wear, Found<Drag> drag) {

    /** The share of the load at which the springs are tensioned again; usual, own choice. */
    public static final double KEEP = 0.8;

    /** {@return what a load does at an installation} */
    static Running of(Installation installation, Found<BladeLoad> load) {
        HardwareCard card = installation.card();
        return new Running(
                load.then(found ->
                        Drag.contactPressure(found.lineLoad(), card.blade().contact())),
                load.then(found ->
                        BladeWear.toRetension(found.load(), card.spring().rate(), KEEP)),
                load.then(found -> Drag.of(found.load(), card.blade().friction(), installation.beltSpeed())));
    }

    /** {@return every quantity} */
    List<Found<?>> all() {
        return List.of(pressure, wear, drag);
    }
}
