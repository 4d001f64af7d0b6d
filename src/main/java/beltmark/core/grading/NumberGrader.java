package beltmark.core.grading;

import beltmark.core.measure.NumberReader;
import beltmark.core.measure.Unit;
import beltmark.core.problem.Answer;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.NumberBlank.NumberSlip;
import beltmark.core.problem.OwnFigures;
import beltmark.core.units.LengthUnit;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Judges numbers with their unit. */
final class NumberGrader {

    private NumberGrader() {}

    static Grade grade(NumberBlank blank, @Nullable String typed, LengthUnit system, OwnFigures own) {
        Unit ownUnit = system == LengthUnit.INCH
                ? blank.units().customary()
                : blank.units().metric();
        NumberReader.Reading reading = NumberReader.read(typed, ownUnit);
        if (reading.trouble() != null) {
            return Grade.unreadable(Unreadable.of(reading.trouble()));
        }
        double amount = reading.unit().in(blank.units().metric(), reading.amount());
        if (blank.isPlausible(amount)) {
            return grade(blank, amount, reading, own);
        }
        return isRightInOtherUnit(blank, reading)
                ? Grade.of(Verdict.WRONG_UNIT, new Answer.OfNumber(amount))
                : Grade.unreadable(Unreadable.OUT_OF_RANGE);
    }

    private static Grade grade(NumberBlank blank, double amount, NumberReader.Reading reading, OwnFigures own) {
        Answer answer = new Answer.OfNumber(amount);
        if (blank.tolerance().holds(amount, blank.rightAmount())) {
            return Grade.of(Verdict.RIGHT, answer);
        }
        if (isCarried(blank, amount, own)) {
            return Grade.of(Verdict.CARRIED, answer);
        }
        List<NumberSlip> fitting = blank.slips().stream()
                .filter(slip -> blank.tolerance().holds(amount, slip.amount()))
                .toList();
        if (!fitting.isEmpty()) {
            return fitting.size() == 1 ? Grade.slip(fitting.get(0).id(), answer) : Grade.of(Verdict.AMBIGUOUS, answer);
        }
        return Grade.of(isRightInOtherUnit(blank, reading) ? Verdict.WRONG_UNIT : Verdict.WRONG, answer);
    }

    private static boolean isCarried(NumberBlank blank, double amount, OwnFigures own) {
        return blank.carry()
                .from(own)
                .filter(carried -> !blank.tolerance().holds(carried, blank.rightAmount()))
                .filter(carried -> blank.tolerance().holds(amount, carried))
                .isPresent();
    }

    /** Whether the number alone is right in a unit of the same kind other than the one it was read in. */
    private static boolean isRightInOtherUnit(NumberBlank blank, NumberReader.Reading reading) {
        return Stream.of(Unit.values())
                .filter(unit -> unit != reading.unit() && unit.isLike(reading.unit()))
                .anyMatch(unit -> blank.tolerance()
                        .holds(unit.in(blank.units().metric(), reading.amount()), blank.rightAmount()));
    }
}
