package beltmark.core.grading;

import beltmark.core.problem.Answer;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Judges lengths. */
final class LengthGrader {

    private LengthGrader() {}

    static Grade grade(LengthBlank blank, @Nullable String typed, LengthUnit unit, OwnFigures own) {
        LengthReading reading = LengthReader.read(typed, unit);
        if (reading.fault() != null) {
            return Grade.unreadable(Unreadable.of(reading.fault()));
        }
        return switch (blank.plausible().fit(reading)) {
            case INSIDE -> grade(blank, reading, own);
            case OTHER_UNIT ->
                isRightInOtherUnit(blank, reading)
                        ? Grade.of(Verdict.WRONG_UNIT, new Answer.OfLength(reading.getLength()))
                        : Grade.unreadable(Unreadable.OTHER_UNIT);
            case OUT_OF_RANGE -> Grade.unreadable(Unreadable.OUT_OF_RANGE);
        };
    }

    private static Grade grade(LengthBlank blank, LengthReading reading, OwnFigures own) {
        Length length = reading.getLength();
        Answer answer = new Answer.OfLength(length);
        if (length.isWithin(blank.tolerance(), blank.rightLength())) {
            return Grade.of(Verdict.RIGHT, answer);
        }
        if (isCarried(blank, length, own)) {
            return Grade.of(Verdict.CARRIED, answer);
        }
        List<Slip> fitting = blank.slips().stream()
                .filter(slip -> length.isWithin(blank.tolerance(), slip.value()))
                .toList();
        if (!fitting.isEmpty()) {
            return fitting.size() == 1 ? Grade.slip(fitting.get(0).id(), answer) : Grade.of(Verdict.AMBIGUOUS, answer);
        }
        if (isRightInOtherUnit(blank, reading)) {
            return Grade.of(Verdict.WRONG_UNIT, answer);
        }
        boolean near = length.isWithin(blank.nearMiss(), blank.rightLength());
        return Grade.of(near ? Verdict.ONE_OFF : Verdict.WRONG, answer);
    }

    /** A figure that follows from right earlier answers is the right one, so it was caught before. */
    private static boolean isCarried(LengthBlank blank, Length length, OwnFigures own) {
        return blank.carry()
                .from(own)
                .filter(carried -> !carried.isWithin(blank.tolerance(), blank.rightLength()))
                .filter(carried -> length.isWithin(blank.tolerance(), carried))
                .isPresent();
    }

    private static boolean isRightInOtherUnit(LengthBlank blank, LengthReading reading) {
        LengthUnit other = reading.unit() == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        double timesOver = (double) other.nanometres() / reading.unit().nanometres();
        return reading.getLength().times(timesOver).isWithin(blank.tolerance(), blank.rightLength());
    }
}
