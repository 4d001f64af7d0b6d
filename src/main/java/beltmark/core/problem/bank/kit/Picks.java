package beltmark.core.problem.bank.kit;

import beltmark.core.problem.SeveralBlank;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects the right picks and the known wrong ones of a question whose answer may be that there is nothing. */
final class Picks {

    private final String nothing;
    private final Set<String> right;
    private final Map<String, Set<String>> slips = new LinkedHashMap<>();

    /**
     * Begins.
     *
     * @param nothing the option that says that there is nothing
     * @param right what is to be picked; when empty, it is that option
     */
    Picks(String nothing, Collection<String> right) {
        this.nothing = nothing;
        this.right = orNothing(right);
    }

    private Set<String> orNothing(Collection<String> picked) {
        return picked.isEmpty() ? Set.of(nothing) : Set.copyOf(picked);
    }

    /** Adds a known wrong way, unless here it leads to the right picks or to those of a way added before. */
    void slip(String id, Collection<String> picked) {
        Set<String> all = orNothing(picked);
        if (!all.equals(right) && !slips.containsValue(all)) {
            slips.put(id, all);
        }
    }

    /** {@return the blank with those options and the one for nothing, and the slip behind each single wrong pick} */
    SeveralBlank blank(String id, List<String> options, Map<String, String> each) {
        List<String> all = new ArrayList<>(options);
        all.add(nothing);
        Map<String, String> single = new HashMap<>(each);
        single.put(nothing, "nothing-and-something");
        if (right.contains(nothing)) {
            // beside the tick for nothing, any other one is a contradiction
            options.forEach(option -> single.put(option, "nothing-and-something"));
        }
        return new SeveralBlank(id, all, right, slips, single);
    }
}
