package beltmark.core.lockout;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a person marked on one question: each marked option with its place. An option that was left blank is not there.
 *
 * @param places the place of each marked option; always 1 where options are only chosen, 1..n where they are put in
 *     order; anything else is kept as it came and judged as not answered
 */
public record Answer(Map<String, Integer> places) {

    /** Keeps the places as they are. */
    public Answer {
        places = Map.copyOf(places);
    }

    /** {@return an answer that chooses these options} */
    public static Answer ofChosen(Collection<String> options) {
        Map<String, Integer> places = new LinkedHashMap<>();
        options.forEach(option -> places.put(option, 1));
        return new Answer(places);
    }

    /** {@return an answer that puts these options in this order, first to last} */
    public static Answer ofOrder(List<String> options) {
        Map<String, Integer> places = new LinkedHashMap<>();
        options.forEach(option -> places.put(option, places.size() + 1));
        return new Answer(places);
    }

    /** {@return the marked options by their place, and in the order of their ids where places are equal} */
    public List<String> inOrder() {
        return places.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.naturalOrder())))
                .map(Map.Entry::getKey)
                .toList();
    }
}
