package beltmark.core.lockout;

import java.util.ArrayList;
import java.util.List;

/** Every order of a few things. */
final class Permutations {

    private Permutations() {}

    static List<List<String>> of(List<String> things) {
        if (things.isEmpty()) {
            return List.of(List.of());
        }
        List<List<String>> all = new ArrayList<>();
        for (List<String> rest : of(things.subList(1, things.size()))) {
            for (int place = 0; place <= rest.size(); place++) {
                List<String> order = new ArrayList<>(rest);
                order.add(place, things.get(0));
                all.add(order);
            }
        }
        return all;
    }
}
