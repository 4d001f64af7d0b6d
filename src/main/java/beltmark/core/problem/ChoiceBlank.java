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
 */
public record ChoiceBlank(String id, List<String> options, String rightOption, Map<String, String> slips)
        implements Blank {

    public ChoiceBlank {
        options = List.copyOf(options);
        slips = Map.copyOf(slips);
    }

    @Override
    public Answer right() {
        return new Answer.OfChoice(rightOption);
    }

    @Override
    public boolean isFair() {
        return options.contains(rightOption) && !slips.containsKey(rightOption);
    }
}
