package beltmark.core.grading;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * Judges answers. Right is looked for first, then a carried figure, then a slip: somebody whose earlier slip shows again
 * in a later part has worked that part correctly and is not told off twice.
 */
public final class Grader {

    private Grader() {}

    /**
     * Judges what was typed into one blank; never throws.
     *
     * @param blank the blank
     * @param typed what was typed, or the option picked; null when the field was missing
     * @param unit the unit of a length typed without one
     * @param own the person's own earlier figures
     * @return the judgement
     */
    public static Grade grade(Blank blank, @Nullable String typed, LengthUnit unit, OwnFigures own) {
        return blank instanceof LengthBlank length
                ? grade(length, typed, unit, own)
                : grade((ChoiceBlank) blank, typed);
    }

    private static Grade grade(ChoiceBlank blank, @Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return Grade.unreadable(Unreadable.BLANK);
        }
        if (!blank.options().contains(typed)) {
            return Grade.unreadable(Unreadable.NOT_AN_OPTION);
        }
        Answer answer = new Answer.OfChoice(typed);
        if (typed.equals(blank.rightOption())) {
            return Grade.of(Verdict.RIGHT, answer);
        }
        String slip = blank.slips().get(typed);
        return slip == null ? Grade.of(Verdict.WRONG, answer) : Grade.slip(slip, answer);
    }

    private static Grade grade(LengthBlank blank, @Nullable String typed, LengthUnit unit, OwnFigures own) {
        LengthReading reading = LengthReader.read(typed, unit);
        if (reading.fault() != null) {
            return Grade.unreadable(Unreadable.of(reading.fault()));
        }
        return switch (blank.plausible().fit(reading)) {
            case INSIDE -> grade(blank, reading.getLength(), own);
            case OTHER_UNIT -> Grade.unreadable(Unreadable.OTHER_UNIT);
            case OUT_OF_RANGE -> Grade.unreadable(Unreadable.OUT_OF_RANGE);
        };
    }

    private static Grade grade(LengthBlank blank, Length length, OwnFigures own) {
        Answer answer = new Answer.OfLength(length);
        if (length.isWithin(blank.tolerance(), blank.rightLength())) {
            return Grade.of(Verdict.RIGHT, answer);
        }
        if (isCarried(blank, length, own)) {
            return Grade.of(Verdict.CARRIED, answer);
        }
        return Slip.behind(blank.slips(), length, blank.tolerance())
                .map(slip -> Grade.slip(slip.id(), answer))
                .orElseGet(() -> Grade.of(Verdict.WRONG, answer));
    }

    /** A figure that follows from right earlier answers is the right one, so it was caught before. */
    private static boolean isCarried(LengthBlank blank, Length length, OwnFigures own) {
        return blank.carry()
                .from(own)
                .filter(carried -> !carried.isWithin(blank.tolerance(), blank.rightLength()))
                .filter(carried -> length.isWithin(blank.tolerance(), carried))
                .isPresent();
    }
}
