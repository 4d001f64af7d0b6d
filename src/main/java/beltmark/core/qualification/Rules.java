package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All versions of all qualification rules, checked to go together. */
public final class Rules {

    private final Map<String, List<QualificationRule>> byId = new LinkedHashMap<>();

    private Rules(List<QualificationRule> versions) {
        versions.forEach(
                rule -> byId.computeIfAbsent(rule.id(), id -> new ArrayList<>()).add(rule));
        byId.replaceAll((id, own) -> own.stream()
                .sorted(Comparator.comparing(QualificationRule::validFrom))
                .toList());
        byId.values().forEach(Rules::requireRising);
        byId.keySet().forEach(this::requireNotOnItself);
    }

    /**
     * {@return the rules of some versions, in the order in which their qualifications are first named}
     *
     * @throws IllegalArgumentException when a later version begins no later than an earlier one, or a prerequisite is
     *     unknown or leads back to itself
     */
    public static Rules of(List<QualificationRule> versions) {
        return new Rules(versions);
    }

    private static void requireRising(List<QualificationRule> versions) {
        for (int i = 1; i < versions.size(); i++) {
            QualificationRule before = versions.get(i - 1);
            QualificationRule after = versions.get(i);
            if (after.version() <= before.version() || !after.validFrom().isAfter(before.validFrom())) {
                throw new IllegalArgumentException("version " + after.version() + " of " + after.id() + " from "
                        + after.validFrom() + " does not follow version " + before.version() + " from "
                        + before.validFrom());
            }
        }
    }

    private void requireNotOnItself(String id) {
        Set<String> seen = new HashSet<>();
        Deque<String> ahead = new ArrayDeque<>(prerequisites(id));
        while (!ahead.isEmpty()) {
            String next = ahead.pop();
            if (next.equals(id)) {
                throw new IllegalArgumentException("the prerequisites of " + id + " lead back to it");
            }
            if (!byId.containsKey(next)) {
                throw new IllegalArgumentException("there is no qualification " + next + " that " + id + " could need");
            }
            if (seen.add(next)) {
                ahead.addAll(prerequisites(next));
            }
        }
    }

    private List<String> prerequisites(String id) {
        return versions(id).stream()
                .flatMap(rule -> rule.needs().prerequisites().stream())
                .toList();
    }

    /** {@return the ids of all qualifications} */
    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }

    /** {@return the versions of a qualification, the first one first; none when there is no such qualification} */
    public List<QualificationRule> versions(String id) {
        return byId.getOrDefault(id, List.of());
    }

    /** {@return the version of a qualification that is valid on a day, if one is} */
    public Optional<QualificationRule> findValid(String id, LocalDate on) {
        return versions(id).stream()
                .filter(rule -> !rule.validFrom().isAfter(on))
                .reduce((before, after) -> after);
    }

    /** {@return the version of every qualification that is valid on a day} */
    public List<QualificationRule> listValid(LocalDate on) {
        return byId.keySet().stream().flatMap(id -> findValid(id, on).stream()).toList();
    }

    /** {@return every version of every qualification} */
    public List<QualificationRule> all() {
        return byId.values().stream().flatMap(List::stream).toList();
    }

    /** {@return the days on which a version is valid} */
    Days daysOf(QualificationRule rule) {
        LocalDate last = versions(rule.id()).stream()
                .map(QualificationRule::validFrom)
                .filter(from -> from.isAfter(rule.validFrom()))
                .min(Comparator.naturalOrder())
                .map(from -> from.minusDays(1))
                .orElse(Days.LAST);
        return Days.of(rule.validFrom(), last);
    }
}
