package beltmark.core.problem.bank.job;

import beltmark.core.problem.Draw;
import beltmark.core.problem.OrderBlank;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Steps in their one right order, and the known wrong ones.
 *
 * @param order the steps' ids, first to last
 * @param wrong a known wrong order, by its slip
 */
record Sequence(List<String> order, Map<String, List<String>> wrong) {

    static Sequence of(List<String> order) {
        return new Sequence(order, new LinkedHashMap<>());
    }

    /** Adds the order in which one step comes before another, unless they are missing, neighbours, or known already. */
    Sequence slip(String slip, String early, String late) {
        int from = order.indexOf(early);
        int to = order.indexOf(late);
        if (to >= 0 && from > to + 1) {
            List<String> moved = new ArrayList<>(order);
            moved.remove(from);
            moved.add(to, early);
            if (!wrong.containsValue(moved)) {
                wrong.put(slip, moved);
            }
        }
        return this;
    }

    /** {@return the blank, its steps mixed; each step before its turn is a slip of its own, {@code early-<step>}} */
    OrderBlank blank(Draw draw, String prefix) {
        List<String> shown = draw.shuffled(order);
        Map<String, String> early = order.stream()
                .skip(1)
                .collect(Collectors.toMap(step -> step, step -> "early-" + step.substring(prefix.length())));
        return new OrderBlank("order", shown, order, wrong, early);
    }
}
