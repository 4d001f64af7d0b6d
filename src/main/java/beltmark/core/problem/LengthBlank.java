package beltmark.core.problem;

import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import java.util.List;

/**
 * A length to be typed.
 *
 * @param id the name within its part
 * @param rightLength the right length
 * @param tolerance how far off an answer still counts as that value; belongs to the quantity
 * @param plausible what an answer can be at all; anything outside was typed in the wrong unit or by accident
 * @param slips the known wrong ways
 * @param carry how it follows from earlier answers
 */
public record LengthBlank(
        String id, Length rightLength, Length tolerance, LengthSpan plausible, List<Slip> slips, Carry carry)
        implements Blank {

    public LengthBlank {
        slips = List.copyOf(slips);
    }

    @Override
    public Answer right() {
        return new Answer.OfLength(rightLength);
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
        return slips.subList(0, index).stream()
                .anyMatch(earlier -> clash(earlier.value(), slips.get(index).value()));
    }

    private boolean clash(Length a, Length b) {
        return a.isWithin(tolerance, b);
    }
}
