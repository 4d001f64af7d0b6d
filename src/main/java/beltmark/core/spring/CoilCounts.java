package beltmark.core.spring;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/**
 * Coils, pitch and lengths of a spring by its {@link SpringEnds}. Source: Shigley's Mechanical Engineering Design, table
 * 10-1 (seen second-hand). Real springs are up to about 0.75 d shorter at solid: measure them.
 *
 * @param active the active coils Na
 * @param total all coils, Nt = Na + Ne
 * @param pitch from coil to coil without load, p
 * @param free the free length L0
 * @param solid the solid length Ls
 */
public record CoilCounts(Ratio active, Ratio total, Length pitch, Length free, Length solid) {

    /**
     * Finds them from the free length.
     *
     * @param ends how the ends are made
     * @param wire the wire diameter d, above 0
     * @param activeCoils the active coils Na, above 0
     * @param free the free length L0, above the solid length
     * @throws Refused NO_ACTIVE_COILS, FREE_NOT_ABOVE_SOLID, OUT_OF_RANGE
     */
    public static Solution<CoilCounts> fromFree(SpringEnds ends, Length wire, double activeCoils, Length free) {
        Limits.positive("free", free);
        Length solid = SolidLength.of(ends, wire, activeCoils).result();
        if (free.compareTo(solid) <= 0) {
            throw Refused.because(Refusal.FREE_NOT_ABOVE_SOLID)
                    .with("free", free)
                    .with("solid", solid);
        }
        double pitches = ends.pitchesInFree(activeCoils);
        double wires = ends.wiresInFree() * wire.millimetres();
        Length pitch = Length.ofMillimetres((free.millimetres() - wires) / pitches);
        Ratio total = new Ratio(activeCoils + ends.inactiveCoils());
        return solved(new CoilCounts(new Ratio(activeCoils), total, pitch, free, solid), wire);
    }

    /** {@return the same from the pitch p, above the wire diameter; FREE_NOT_ABOVE_SOLID when it is not} */
    public static Solution<CoilCounts> fromPitch(SpringEnds ends, Length wire, double activeCoils, Length pitch) {
        Limits.positive("pitch", pitch);
        CoilRate.checkCoils(activeCoils);
        double wires = ends.wiresInFree() * wire.millimetres();
        Length free = Length.ofMillimetres(pitch.millimetres() * ends.pitchesInFree(activeCoils) + wires);
        return fromFree(ends, wire, activeCoils, free);
    }

    private static Solution<CoilCounts> solved(CoilCounts counts, Length wire) {
        return Solution.of(
                counts,
                Step.of("coils-total", "activeCoils", counts.active).with("totalCoils", counts.total),
                Step.of("coils-solid", "wire", wire)
                        .with("totalCoils", counts.total)
                        .with("solid", counts.solid),
                Step.of("coils-pitch", "free", counts.free).with("pitch", counts.pitch));
    }
}
