package beltmark.core.setup;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * As-left measures against the card. What is wanted comes from the very functions that pose the problems: each side's
 * mount mark from that side's own belt mark ({@link MountMarks}), the spring length from the chart
 * ({@link SpringSetting}), the sleeve as set on the mark ({@link SleeveExposure}).
 *
 * @param measures each measure on each side, in the order of the job
 * @param springDifference left spring length less right; both are set the same
 * @param springTolerance the most that the two may differ
 */
public record AsLeftCheck(List<MeasureCheck> measures, Length springDifference, Length springTolerance) {

    /** How many times longer an inch is than a millimetre, exactly. */
    private static final double MILLIMETRES_PER_INCH =
            (double) LengthUnit.INCH.nanometres() / LengthUnit.MILLIMETRE.nanometres();

    public AsLeftCheck {
        measures = List.copyOf(measures);
    }

    /**
     * Checks what was measured.
     *
     * @param card the hardware
     * @param setting the spring setting from the card's chart for the tip and the blade
     * @param asLeft what was measured
     * @return every measure with what was wanted
     */
    public static AsLeftCheck of(HardwareCard card, SpringSetting setting, AsLeft asLeft) {
        List<MeasureCheck> measures = new ArrayList<>();
        for (Side side : Side.values()) {
            measures.add(mountMark(card, setting.tip(), asLeft, side));
        }
        for (Side side : Side.values()) {
            measures.add(spring(card, setting, asLeft, side));
        }
        for (Side side : Side.values()) {
            measures.add(sleeve(card, setting.tip(), asLeft, side));
        }
        return new AsLeftCheck(
                measures,
                asLeft.springs().left().minus(asLeft.springs().right()),
                card.tolerances().spring());
    }

    private static MeasureCheck mountMark(HardwareCard card, Tip tip, AsLeft asLeft, Side side) {
        Orientation orientation = asLeft.orientation();
        Length offset = card.mountOffset(tip, orientation);
        Length wanted = new MountMarks(asLeft.beltMarks(), offset).heights().on(side);
        List<Slip> slips = new ArrayList<>(MountMarkSlips.of(card, tip, orientation, asLeft.beltMarks(), side));
        addOtherUnit(slips, wanted);
        addBothInOtherUnit(
                slips, asLeft.beltMarks().on(side), offset, card.tolerances().mark());
        return check(Measure.MOUNT_MARK, side, wanted, asLeft, card.tolerances().mark(), slips);
    }

    private static MeasureCheck spring(HardwareCard card, SpringSetting setting, AsLeft asLeft, Side side) {
        List<Slip> slips = new ArrayList<>(SpringLengthSlips.of(card, setting));
        addOtherUnit(slips, setting.springLength());
        return check(
                Measure.SPRING,
                side,
                setting.springLength(),
                asLeft,
                card.tolerances().spring(),
                slips);
    }

    private static MeasureCheck sleeve(HardwareCard card, Tip tip, AsLeft asLeft, Side side) {
        Length wanted = new SleeveExposure(card.sleeve(), Length.ZERO, Length.ZERO).atRest();
        Length mountedHigh = asLeft.mountedHigh(side, card.mountOffset(tip, asLeft.orientation()));
        List<Slip> slips = new ArrayList<>();
        if (!mountedHigh.isWithin(card.tolerances().mark(), Length.ZERO)) {
            showing(card, mountedHigh).ifPresent(shows -> slips.add(new Slip("mounted-off-its-mark", shows)));
        }
        addOtherUnit(slips, wanted);
        return check(Measure.SLEEVE, side, wanted, asLeft, card.tolerances().sleeve(), slips);
    }

    /** {@return the sleeve that shows when mounted off the mark; empty when none can, so that nothing follows from it} */
    private static Optional<Length> showing(HardwareCard card, Length mountedHigh) {
        try {
            return Optional.of(new SleeveExposure(card.sleeve(), mountedHigh, Length.ZERO).atRest());
        } catch (Refused noneLeft) {
            return Optional.empty();
        }
    }

    private static void addOtherUnit(List<Slip> slips, Length wanted) {
        slips.add(new Slip("inches-as-millimetres", wanted.times(1 / MILLIMETRES_PER_INCH)));
        slips.add(new Slip("millimetres-as-inches", wanted.times(MILLIMETRES_PER_INCH)));
    }

    /** Belt mark and mount mark may both have been taken in the other unit; too near the belt mark that shows nothing. */
    private static void addBothInOtherUnit(List<Slip> slips, Length beltMark, Length offset, Length tolerance) {
        Length shrunk = offset.times(1 / MILLIMETRES_PER_INCH);
        if (!shrunk.isWithin(tolerance, Length.ZERO)) {
            slips.add(new Slip("inches-as-millimetres", beltMark.plus(shrunk)));
        }
        slips.add(new Slip("millimetres-as-inches", beltMark.plus(offset.times(MILLIMETRES_PER_INCH))));
    }

    private static MeasureCheck check(
            Measure measure, Side side, Length wanted, AsLeft asLeft, Length tolerance, List<Slip> slips) {
        Length measured = asLeft.of(measure).on(side);
        Optional<Slip> slip =
                measured.isWithin(tolerance, wanted) ? Optional.empty() : Slip.behind(slips, measured, tolerance);
        return new MeasureCheck(
                measure, side, wanted, measured, tolerance, slip.map(Slip::id).orElse(null));
    }

    /** {@return whether the two springs are set the same, as far as the card's tolerance} */
    public boolean areSpringsEqual() {
        return springDifference.isWithin(springTolerance, Length.ZERO);
    }

    /** {@return whether every measure is within what the card allows and both springs are set the same} */
    public boolean isWithin() {
        return areSpringsEqual() && measures.stream().allMatch(MeasureCheck::isWithin);
    }
}
