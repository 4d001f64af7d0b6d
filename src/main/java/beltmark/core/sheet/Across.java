package beltmark.core.sheet;

import beltmark.core.geometry.Centring;
import beltmark.core.geometry.PoleLength;
import beltmark.core.setup.PoleCard;
import beltmark.core.units.Length;
import java.util.List;

/**
 * Where everything is across the belt, with belt and blade in the middle between the walls.
 *
 * @param centring from the walls to the blade, and from the blade to the edge of the belt
 * @param pole how long the pole has to be
 */
public record Across(Found<Centring> centring, Found<Length> pole) {

    /** {@return where everything is at an installation} */
    static Across of(Installation installation) {
        PoleCard pole = installation.card().pole();
        return new Across(
                Found.of(() -> Centring.of(
                        new Centring.Widths(installation.inside(), installation.belt(), installation.blade()),
                        Length.ZERO,
                        Length.ZERO,
                        installation.mistracking())),
                Found.of(() -> PoleLength.of(installation.outside(), pole.bracket(), pole.overhang())));
    }

    /** {@return every quantity} */
    List<Found<?>> all() {
        return List.of(centring, pole);
    }
}
