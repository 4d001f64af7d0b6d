package beltmark.core.statistics;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which of several groups are too small to tell shares of, so that one cannot be worked out either from the whole and the
 * others. A group of 1 to 9 is small; if small groups together are fewer than 10 people, the next larger one is held back
 * with them, and so on, until 10 are together (the habit of statistical offices to hide complements).
 */
public final class SmallGroups {

    private SmallGroups() {}

    /**
     * The groups of which only counts are told.
     *
     * @param sizes how many people each group has
     * @return the groups held back, none if no group is small; ties go by the order of the names
     */
    public static <T extends Comparable<T>> Set<T> heldBack(Map<T, Long> sizes) {
        List<Map.Entry<T, Long>> ascending = sizes.entrySet().stream()
                .filter(group -> group.getValue() > 0)
                .sorted(Comparator.comparing((Map.Entry<T, Long> group) -> group.getValue())
                        .thenComparing(Map.Entry::getKey))
                .toList();
        Set<T> heldBack = new HashSet<>();
        long together = 0;
        for (Map.Entry<T, Long> group : ascending) {
            boolean small = group.getValue() < Proportion.SMALLEST_GROUP;
            if (small || (together > 0 && together < Proportion.SMALLEST_GROUP)) {
                heldBack.add(group.getKey());
                together += group.getValue();
            }
        }
        return heldBack;
    }
}
