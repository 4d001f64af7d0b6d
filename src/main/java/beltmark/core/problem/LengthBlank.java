package beltmark.core.problem;

import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import java.util.List;

/**
 * A length to be typed, or marked on the drawing where it is one that can be marked.
 *
 * @param id the name within its part
 * @param rightLength the right length
 * @param tolerance how far off an answer still counts as that value; belongs to the quantity
 * @param plausible what an answer can be at all; anything outside was typed in the wrong unit or by accident
 * @param slips the known wrong ways
 * @param carry how it follows from earlier answers
 * @param onDrawing whether it may be given by a tap on the drawing of its part
 */
public record LengthBlank(
        String id,
        Length rightLength,
        Length tolerance,
        LengthSpan plausible,
        List<Slip> slips,
        Carry<Length> carry,
        boolean onDrawing)
        implements Blank {

    private static final Length SIXTEENTH = Length.ofSixteenths(1);

    public LengthBlank {
        slips = List.copyOf(slips);
    }

    /** A length that is typed. */
    public LengthBlank(
            String id,
            Length rightLength,
            Length tolerance,
            LengthSpan plausible,
            List<Slip> slips,
            Carry<Length> carry) {
        this(id, rightLength, tolerance, plausible, slips, carry, false);
    }

    /** {@return this blank, given by a tap on the drawing or typed} */
    public LengthBlank markedOnDrawing() {
        return new LengthBlank(id, rightLength, tolerance, plausible, slips, carry, true);
    }

    /** {@return how far off an answer may be to be called one graduation off: a graduation and the tolerance of reading} */
    public Length nearMiss() {
        return tolerance.plus(Length.min(SIXTEENTH, tolerance.plus(tolerance)));
    }

    @Override
    public Answer right() {
        return new Answer.OfLength(rightLength);
    }

    @Override
    public List<WrongAnswer> wrongAnswers() {
        return slips.stream()
                .map(slip -> new WrongAnswer(slip.id(), new Answer.OfLength(slip.value())))
                .toList();
    }

    /**
     * {@inheritDoc} No slip may be within tolerance of the right length or of another slip, and all must lie inside what
     * is plausible, so that a slip is named and not taken for a typing accident.
     */
    @Override
    public boolean isFair() {
        if (!plausible.spans(rightLength)) {
            return false;
        }
        for (int i = 0; i < slips.size(); i++) {
            Length value = slips.get(i).value();
            if (!plausible.spans(value) || clash(value, rightLength) || clashesWithEarlier(i)) {
                return false;
            }
        }
        return true;
    }

    private boolean clashesWithEarlier(int index) {
        Length value = slips.get(index).value();
        for (int i = 0; i < index; i++) {
            if (clash(slips.get(i).value(), value)) {
                return true;
            }
        }
        return false;
    }

    private boolean clash(Length a, Length b) {
        return a.isWithin(tolerance, b);
    }

    @Override
    public double guess() {
        return TYPED_GUESS;
    }

    /** How likely a typed number is right without knowing: the proposal of the practice model, not a measurement. */
    static final double TYPED_GUESS = 0.10;
}
