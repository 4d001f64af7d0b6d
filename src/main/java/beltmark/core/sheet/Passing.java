package beltmark.core.sheet;

import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.Bounce;
import beltmark.core.blade.SpliceCheck;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.SleeveExposure;
import beltmark.core.solution.Solution;
import beltmark.core.spring.CoilGaps;
import beltmark.core.spring.CompressionSpring;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.Mass;
import beltmark.core.units.Speed;
import java.util.List;

/**
 * What happens while the tallest splice passes.
 *
 * @param sleeveAtRest the sleeve showing while the belt runs
 * @param sleeveOverSplice the sleeve still showing on top of the splice
 * @param coilGaps the least sum of gaps to keep between the coils
 * @param splice how far the cleaner can drop, and what presses on top of the splice
 * @param coilMargin how much longer than solid each coil still is on top of the splice
 * @param frequency of the bounce
 * @param back when the blade is back after the splice, and how much belt has passed
 */
public record Passing(
        Found<Length> sleeveAtRest,
        Found<Length> sleeveOverSplice,
        Found<Length> coilGaps,
        Found<SpliceCheck> splice,
        Found<Length> coilMargin,
        Found<Frequency> frequency,
        Found<Bounce> back) {

    /** A spring as set, and the load it helps to give. */
    private record Set(Length coil, Force load) {}

    /** {@return what happens at an installation with its springs set} */
    static Passing of(Installation installation, Springs springs) {
        HardwareCard card = installation.card();
        Length splice = installation.situation().splice();
        SleeveExposure sleeve = installation.situation().sleeve();
        Found<Length> atRest = Found.of(() -> new Solution<>(sleeve.atRest(), sleeve.stepsAtRest(), List.of()));
        Found<Length> gaps = Found.of(() -> gaps(card.spring()));
        Found<SpliceCheck.Room> room =
                atRest.and(gaps, (exposure, sum) -> Solution.of(new SpliceCheck.Room(exposure, sum)));
        Found<Length> coil = springs.setting()
                .then(set -> Solution.of(Springs.lengths(set, card).leftCoil()));
        Found<SpliceCheck> check = springs.load()
                .and(coil, (load, length) -> Solution.of(new Set(length, load.load())))
                .and(room, (set, free) -> SpliceCheck.of(card.spring().working(), set.coil, set.load, free, splice));
        return new Passing(
                atRest,
                Found.of(() -> new Solution<>(sleeve.overSplice(), sleeve.stepsOverSplice(), List.of())),
                gaps,
                check,
                check.then(found -> Solution.of(found.coil().minus(card.spring().solidLength()))),
                // the card's moving mass already holds the springs' share
                Found.of(() -> Bounce.frequency(
                        card.spring().rate(), installation.assembly().moving(), new Mass(0))),
                springs.load().then(load -> back(installation, load, splice)));
    }

    private static Solution<Length> gaps(CompressionSpring spring) {
        return CoilGaps.sum(spring.wire(), spring.meanCoil(), spring.activeCoils(), false);
    }

    private static Solution<Bounce> back(Installation installation, BladeLoad load, Length drop) {
        Bounce.Swing swing = new Bounce.Swing(
                load.load(),
                installation.card().spring().rate(),
                installation.assembly().moving());
        return Bounce.back(swing, drop, new Speed(0), installation.beltSpeed());
    }

    /** {@return every quantity, in the order of the job} */
    List<Found<?>> all() {
        return List.of(sleeveAtRest, sleeveOverSplice, coilGaps, splice, coilMargin, frequency, back);
    }
}
