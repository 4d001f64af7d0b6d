package beltmark.compute;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Surroundings;
import beltmark.core.solution.Solution;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Word;
import java.util.List;

/** What can be computed of mounting a tensioner. */
final class SetupCalculations {

    private SetupCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(mountHeights(), orientation());
    }

    private static Calculation<Sides> mountHeights() {
        return Calculation.several(
                        "mount-heights",
                        SetupCalculations::mountMarks,
                        Field.of("leftMark", Kind.LENGTH).also("leftBeltMark", "markLeft", "beltMarkLeft"),
                        Field.of("rightMark", Kind.LENGTH).also("rightBeltMark", "markRight", "beltMarkRight"),
                        Field.of("offset", Kind.LENGTH).also("mountOffset"))
                .giving("leftMm", "mm", Sides::left)
                .giving("rightMm", "mm", Sides::right)
                .giving("differenceMm", "mm", sides -> sides.right().minus(sides.left()));
    }

    private static Solution<Sides> mountMarks(Given given) {
        Length left = Limits.signed("leftMark", given.length("leftMark"));
        Length right = Limits.signed("rightMark", given.length("rightMark"));
        MountMarks marks = new MountMarks(new Sides(left, right), Limits.signed("offset", given.length("offset")));
        return new Solution<>(marks.heights(), marks.steps(), List.of());
    }

    /** A choice that was made: the orientation and the gaps. */
    private record Mounted(Orientation orientation, OrientationChoice choice) {

        /** The orientation with the larger gap, as delivered when they are the same. */
        private Orientation roomier() {
            return choice.underslungGap().compareTo(choice.overslungGap()) > 0
                    ? Orientation.UNDERSLUNG
                    : Orientation.OVERSLUNG;
        }
    }

    private static Calculation<Mounted> orientation() {
        return Calculation.several(
                        "orientation",
                        SetupCalculations::mounted,
                        Field.of("overslungLow", Kind.LENGTH),
                        Field.of("overslungHigh", Kind.LENGTH),
                        Field.of("underslungLow", Kind.LENGTH),
                        Field.of("underslungHigh", Kind.LENGTH),
                        Field.of("floor", Kind.LENGTH),
                        Field.of("roof", Kind.LENGTH),
                        Field.of("obstacles", Kind.REACHES).optional(),
                        Field.of("clearance", Kind.LENGTH))
                .giving("orientation", "", mounted -> word(mounted.orientation))
                .giving("gapMm", "mm", mounted -> mounted.choice.gap(mounted.orientation))
                .giving("overslungGapMm", "mm", mounted -> mounted.choice.overslungGap())
                .giving("underslungGapMm", "mm", mounted -> mounted.choice.underslungGap())
                .giving("largestGapMm", "mm", mounted -> mounted.choice.gap(mounted.roomier()))
                .giving("largestGapOrientation", "", mounted -> word(mounted.roomier()));
    }

    private static Word word(Orientation orientation) {
        return orientation.word();
    }

    private static Solution<Mounted> mounted(Given given) {
        Length floor = Limits.signed("floor", given.length("floor"));
        Length roof = Limits.signed("roof", given.length("roof"));
        if (roof.compareTo(floor) <= 0) {
            throw Refused.because(Refusal.UPSIDE_DOWN).with("low", floor).with("high", roof);
        }
        List<Reach> obstacles = given.reaches("obstacles").stream()
                .map(pair -> reach("obstacles", pair[0], pair[1]))
                .toList();
        Surroundings surroundings = new Surroundings(floor, roof, obstacles);
        OrientationChoice choice = new OrientationChoice(
                Limits.notNegative("clearance", given.length("clearance")),
                surroundings.leastGap(reach(given, "overslung")),
                surroundings.leastGap(reach(given, "underslung")));
        Orientation chosen = choice.chosen()
                .orElseThrow(() -> Refused.because(Refusal.NOTHING_FITS).with("shortBy", choice.shortBy()));
        return new Solution<>(new Mounted(chosen, choice), choice.steps(), List.of());
    }

    private static Reach reach(Given given, String orientation) {
        return reach(orientation, given.length(orientation + "Low"), given.length(orientation + "High"));
    }

    private static Reach reach(String what, Length low, Length high) {
        Limits.signed(what, low);
        Limits.signed(what, high);
        if (high.compareTo(low) < 0) {
            throw Refused.because(Refusal.UPSIDE_DOWN).with("low", low).with("high", high);
        }
        return new Reach(low, high);
    }
}
