package beltmark.core.problem;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Each thing is to be given its partner; a partner may serve several things or none.
 *
 * @param id the name within its part
 * @param things the things' ids in the order shown
 * @param partners the partners' ids in the order shown
 * @param rightPartners the right partner by thing
 * @param slips the slip behind one wrong pair, by {@code thing:partner}; told when that pair is the only thing wrong
 */
public record MatchBlank(
        String id,
        List<String> things,
        List<String> partners,
        Map<String, String> rightPartners,
        Map<String, String> slips)
        implements Blank {

    public MatchBlank {
        things = List.copyOf(things);
        partners = List.copyOf(partners);
        rightPartners = Map.copyOf(rightPartners);
        slips = Map.copyOf(slips);
    }

    @Override
    public Answer right() {
        return new Answer.OfMatch(rightPartners);
    }

    @Override
    public List<WrongAnswer> wrongAnswers() {
        return slips.entrySet().stream()
                .map(slip -> new WrongAnswer(slip.getValue(), with(slip.getKey())))
                .toList();
    }

    private Answer with(String pair) {
        int colon = pair.indexOf(':');
        Map<String, String> changed = new HashMap<>(rightPartners);
        changed.put(pair.substring(0, colon), pair.substring(colon + 1));
        return new Answer.OfMatch(changed);
    }

    @Override
    public boolean isFair() {
        return rightPartners.keySet().equals(Set.copyOf(things))
                && partners.containsAll(rightPartners.values())
                && Blank.areDistinct(right(), wrongAnswers());
    }

    @Override
    public double guess() {
        return Math.pow(1.0 / partners.size(), things.size());
    }
}
