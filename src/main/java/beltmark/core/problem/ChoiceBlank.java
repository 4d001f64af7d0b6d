package beltmark.core.problem;

import java.util.List;
import java.util.Map;

/**
 * One of several options to be picked.
 *
 * @param id the name within its part
 * @param options the options' ids in the order shown
 * @param rightOption the right one
 * @param slips the slip behind a wrong option, by option; an option without one is just wrong
 * @param carry how it follows from earlier answers
 */
public record ChoiceBlank(
        String id, List<String> options, String rightOption, Map<String, String> slips, Carry<String> carry)
        implements Blank {

    public ChoiceBlank {
        options = List.copyOf(options);
        slips = Map.copyOf(slips);
    }

    /** A choice that hangs on no earlier answer. */
    public ChoiceBlank(String id, List<String> options, String rightOption, Map<String, String> slips) {
        this(id, options, rightOption, slips, Carry.none());
    }

    @Override
    public Answer right() {
        return new Answer.OfChoice(rightOption);
    }

    @Override
    public List<WrongAnswer> wrongAnswers() {
        return options.stream()
                .filter(slips::containsKey)
                .map(option -> new WrongAnswer(slips.getOrDefault(option, ""), new Answer.OfChoice(option)))
                .toList();
    }

    @Override
    public boolean isFair() {
        return options.contains(rightOption) && !slips.containsKey(rightOption);
    }

    @Override
    public double guess() {
        return 1.0 / options.size();
    }
}
