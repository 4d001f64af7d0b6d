package beltmark.core.setup;

import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.LineMass;
import beltmark.core.units.Mass;
import beltmark.core.units.Ratio;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a hardware card says of the blade and of what moves with it.
 *
 * @param movingBase the mass that moves whatever the blade, above 0: rods, moving seats, the springs' share
 * @param movingPerMetre the mass that each metre of blade adds, above 0: blade, holder, pole
 * @param contact how much of the belt the tip touches along the travel, above 0
 * @param spanBeyondBlade how much further apart than the blade is long the springs stand, above 0
 * @param friction of the tip on the belt, above 0; 0.5..0.7 is usual
 * @param wanted the line load to aim at with each tip, above 0
 */
public record BladeCard(
        Mass movingBase,
        LineMass movingPerMetre,
        Length contact,
        Length spanBeyondBlade,
        Ratio friction,
        Map<Tip, LineLoad> wanted) {

    private static final double MILLIMETRES_PER_METRE = 1000;

    public BladeCard {
        wanted = Map.copyOf(wanted);
    }

    /** {@return the mass that moves with a blade of a length b: base + per metre times b} */
    public Mass moving(Length blade) {
        double metres = blade.millimetres() / MILLIMETRES_PER_METRE;
        return new Mass(movingBase.kilograms() + movingPerMetre.kilogramsPerMetre() * metres);
    }

    /** {@return how far apart the springs stand with a blade of a length b} */
    public Length span(Length blade) {
        return blade.plus(spanBeyondBlade);
    }

    /** {@return the line load to aim at with a tip} */
    public LineLoad wanted(Tip tip) {
        @Nullable LineLoad load = wanted.get(tip);
        if (load == null) {
            throw new IllegalArgumentException("no wanted line load for " + tip.id());
        }
        return load;
    }
}
