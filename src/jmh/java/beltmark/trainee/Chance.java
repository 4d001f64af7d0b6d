package beltmark.trainee;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.MatchBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.SeveralBlank;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/** Answers that come about by chance. */
final class Chance {

    private static final double AROUND = 0.3;

    /** Where the right answer is nought or nearly so, 30 % of it would be no room at all. */
    private static final double LEAST_ROOM_TOLERANCES = 10;

    private final SplittableRandom random;

    Chance(SplittableRandom random) {
        this.random = random;
    }

    boolean happens(double chance) {
        return random.nextDouble() < chance;
    }

    /** {@return the answer read off or rounded with an error of up to half a tolerance, each equally likely} */
    Answer blurred(Blank blank, Answer answer) {
        double off = random.nextDouble() - 0.5;
        if (answer instanceof Answer.OfLength length) {
            return new Answer.OfLength(
                    length.length().plus(((LengthBlank) blank).tolerance().times(off)));
        }
        return answer instanceof Answer.OfNumber number
                ? new Answer.OfNumber(
                        number.amount() + ((NumberBlank) blank).tolerance().around(number.amount()) * off)
                : answer;
    }

    /**
     * {@return an answer of somebody without any method: a plausible value within 30 % of the right one, or any pick or
     * order, each equally likely; it may happen to be right}
     */
    Answer stray(Blank blank) {
        if (blank instanceof LengthBlank length) {
            return stray(length);
        }
        if (blank instanceof NumberBlank number) {
            return stray(number);
        }
        if (blank instanceof ChoiceBlank choice) {
            return new Answer.OfChoice(oneOf(choice.options()));
        }
        if (blank instanceof SeveralBlank several) {
            return new Answer.OfSeveral(some(several.options()));
        }
        return blank instanceof OrderBlank order
                ? new Answer.OfOrder(shuffled(order.items()))
                : stray((MatchBlank) blank);
    }

    private Answer stray(LengthBlank blank) {
        double right = blank.rightLength().millimetres();
        double tolerance = blank.tolerance().millimetres();
        double from = blank.plausible().from().millimetres();
        double to = blank.plausible().to().millimetres();
        return new Answer.OfLength(Length.ofMillimetres(near(right, tolerance, from, to)));
    }

    private Answer stray(NumberBlank blank) {
        double right = blank.rightAmount();
        return new Answer.OfNumber(near(right, blank.tolerance().around(right), blank.from(), blank.to()));
    }

    private double near(double right, double tolerance, double least, double most) {
        double room = Math.max(AROUND * Math.abs(right), LEAST_ROOM_TOLERANCES * tolerance);
        double from = Math.max(least, right - room);
        double to = Math.min(most, right + room);
        return from + (to - from) * random.nextDouble();
    }

    private Answer stray(MatchBlank blank) {
        Map<String, String> partners = new HashMap<>();
        blank.things().forEach(thing -> partners.put(thing, oneOf(blank.partners())));
        return new Answer.OfMatch(partners);
    }

    private Set<String> some(List<String> options) {
        Set<String> picked = new HashSet<>();
        while (picked.isEmpty()) {
            options.stream().filter(option -> happens(0.5)).forEach(picked::add);
        }
        return picked;
    }

    private List<String> shuffled(List<String> items) {
        List<String> mixed = new ArrayList<>(items);
        for (int i = mixed.size() - 1; i > 0; i--) {
            Collections.swap(mixed, i, random.nextInt(i + 1));
        }
        return mixed;
    }

    private <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
