package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/**
 * How far to turn an adjusting nut for a change of length: turns = change/pitch, flats = 6 turns on a hexagon nut. Own
 * derivation.
 *
 * @param turns whole and part turns; negative the other way
 * @param flats the same in flats of a hexagon nut
 */
public record NutTurns(Ratio turns, Ratio flats) {

    private static final int FLATS = 6;

    /**
     * Finds the turns.
     *
     * @param change of the length; negative to shorten
     * @param pitch of the thread, above 0
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<NutTurns> of(Length change, Length pitch) {
        Limits.signed("change", change);
        Limits.positive("pitch", pitch);
        double turns = change.millimetres() / pitch.millimetres();
        NutTurns nut = new NutTurns(new Ratio(turns), new Ratio(FLATS * turns));
        return Solution.of(
                nut,
                Step.of("nut-turns", "change", change)
                        .with("pitch", pitch)
                        .with("turns", nut.turns)
                        .with("flats", nut.flats));
    }
}
