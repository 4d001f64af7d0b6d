package beltmark.core.problem;

import beltmark.core.measure.Unit;
import java.util.List;

/**
 * A number with its unit to be typed. All amounts are in the first of its units; a number typed without a unit is in the
 * first one for people who read millimetres, in the second for people who read inches.
 *
 * @param id the name within its part
 * @param units the units it is told in
 * @param rightAmount the right amount
 * @param tolerance how far off an answer still counts as that amount; belongs to the quantity
 * @param from the least an answer can be
 * @param to the most an answer can be; above {@code from}
 * @param slips the known wrong ways
 * @param carry how it follows from earlier answers
 */
public record NumberBlank(
        String id,
        Units units,
        double rightAmount,
        Tolerance tolerance,
        double from,
        double to,
        List<NumberSlip> slips,
        Carry<Double> carry)
        implements Blank {

    public NumberBlank {
        slips = List.copyOf(slips);
        if (!(to > from)) {
            throw new IllegalArgumentException("no number between " + from + " and " + to);
        }
    }

    /**
     * The pair of units that a quantity is told in.
     *
     * @param metric beside millimetres
     * @param customary beside inches; of the same kind, and the same one where only one is in use
     */
    public record Units(Unit metric, Unit customary) {

        /** {@return one unit for everybody} */
        public static Units of(Unit unit) {
            return new Units(unit, unit);
        }
    }

    /**
     * A known wrong way to work a number.
     *
     * @param id hyphenated name; the text files say what to tell the person
     * @param amount what somebody gets who works it this way
     */
    public record NumberSlip(String id, double amount) {}

    @Override
    public Answer right() {
        return new Answer.OfNumber(rightAmount);
    }

    @Override
    public List<WrongAnswer> wrongAnswers() {
        return slips.stream()
                .map(slip -> new WrongAnswer(slip.id(), new Answer.OfNumber(slip.amount())))
                .toList();
    }

    /** {@return whether an answer can be that amount at all} */
    public boolean isPlausible(double amount) {
        return amount >= from && amount <= to;
    }

    /** {@inheritDoc} As for a length; here the bands around two values may not touch each other. */
    @Override
    public boolean isFair() {
        if (!isPlausible(rightAmount)) {
            return false;
        }
        for (int i = 0; i < slips.size(); i++) {
            double amount = slips.get(i).amount();
            if (!Double.isFinite(amount) || !isPlausible(amount) || tolerance.overlap(amount, rightAmount)) {
                return false;
            }
            for (int j = 0; j < i; j++) {
                if (tolerance.overlap(slips.get(j).amount(), amount)) {
                    return false;
                }
            }
        }
        return true;
    }

    @Override
    public double guess() {
        return LengthBlank.TYPED_GUESS;
    }
}
