package beltmark.core.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Every option that is right is to be picked, at least one and perhaps all.
 *
 * @param id the name within its part
 * @param options the options' ids in the order shown
 * @param rightOptions the right ones, at least one
 * @param slips a known wrong set and the slip behind it, by the slip's id
 * @param pickSlips the slip behind one wrong pick or one left out, by option; told when that is the only thing wrong
 */
public record SeveralBlank(
        String id,
        List<String> options,
        Set<String> rightOptions,
        Map<String, Set<String>> slips,
        Map<String, String> pickSlips)
        implements Blank {

    public SeveralBlank {
        options = List.copyOf(options);
        rightOptions = Set.copyOf(rightOptions);
        slips = Map.copyOf(slips);
        pickSlips = Map.copyOf(pickSlips);
    }

    @Override
    public Answer right() {
        return new Answer.OfSeveral(rightOptions);
    }

    @Override
    public List<WrongAnswer> wrongAnswers() {
        ArrayList<WrongAnswer> wrong = new ArrayList<>();
        slips.forEach((slip, picked) -> wrong.add(new WrongAnswer(slip, new Answer.OfSeveral(picked))));
        for (String option : options) {
            String slip = pickSlips.get(option);
            Set<String> picked = toggled(option);
            if (slip != null && !picked.isEmpty() && !slips.containsValue(picked)) {
                wrong.add(new WrongAnswer(slip, new Answer.OfSeveral(picked)));
            }
        }
        return wrong;
    }

    /** {@return the right options with one pick changed} */
    private Set<String> toggled(String option) {
        Set<String> picked = new TreeSet<>(rightOptions);
        if (!picked.remove(option)) {
            picked.add(option);
        }
        return picked;
    }

    @Override
    public boolean isFair() {
        return !rightOptions.isEmpty()
                && options.containsAll(rightOptions)
                && slips.values().stream().allMatch(options::containsAll)
                && Blank.areDistinct(right(), wrongAnswers());
    }

    @Override
    public double guess() {
        return 1 / Math.pow(2, options.size());
    }
}
