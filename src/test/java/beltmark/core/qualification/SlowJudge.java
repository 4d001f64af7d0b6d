package beltmark.core.qualification;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A second judge, for comparison: it looks at one day after the other and knows no spans, and it takes every active day
 * instead of gaps. Written from the words of the rules, with none of the first one's code but the data types.
 */
final class SlowJudge {

    private static final int LONGEST = 1_200;

    private final Rules rules;
    private final long person;
    private final List<Fact> facts;
    private final TreeSet<LocalDate> active;
    private final LocalDate first;
    private final LocalDate on;

    SlowJudge(Rules rules, long person, List<Fact> all, List<Activity> days, LocalDate on, Instant known) {
        this.rules = rules;
        this.person = person;
        this.on = on;
        List<Fact> told =
                all.stream().filter(fact -> !fact.knownAt().isAfter(known)).toList();
        this.facts = told.stream()
                .filter(fact -> !fact.on().isAfter(on))
                .filter(fact -> told.stream().noneMatch(other -> withdraws(other, fact)))
                .toList();
        this.active = new TreeSet<>();
        days.stream()
                .filter(day -> !day.knownAt().isAfter(known) && !day.day().isAfter(on))
                .forEach(day -> active.add(day.day()));
        this.first = facts.stream().map(Fact::on).min(LocalDate::compareTo).orElse(on);
    }

    record Answer(Status status, Optional<LocalDate> lastDay) {}

    Answer answer(String id) {
        if (rules.findValid(id, on).isEmpty()) {
            return new Answer(Status.IN_TRAINING, Optional.empty());
        }
        boolean met = isMet(id, on);
        LocalDate last = met ? lastFrom(id) : lastBefore(id);
        if (isHeld(id, on)) {
            return new Answer(Status.HELD, Optional.ofNullable(last));
        }
        if (!met || last == null) {
            return new Answer(last == null ? Status.IN_TRAINING : Status.LAPSED, Optional.ofNullable(last));
        }
        LocalDate quiet = quietUntil(id);
        LocalDate soon = on.plusDays(rules.findValid(id, on).orElseThrow().dueSoonDays());
        LocalDate end = quiet != null && !quiet.isAfter(soon) && quiet.isBefore(last) ? quiet : last;
        return end.isAfter(soon)
                ? new Answer(Status.CLEARED, Optional.of(last))
                : new Answer(Status.DUE_SOON, Optional.of(end));
    }

    private boolean withdraws(Fact other, Fact fact) {
        boolean mine = other.scope().reach() == Scope.Reach.ALL
                || other.scope().person() == person
                || other.scope().equals(fact.scope());
        return other.kind() == FactKind.WITHDRAWAL && other.of() == fact.record() && mine;
    }

    private LocalDate lastFrom(String id) {
        LocalDate day = on;
        while (isMet(id, day.plusDays(1)) && day.isBefore(on.plusDays(LONGEST))) {
            day = day.plusDays(1);
        }
        return day;
    }

    private @Nullable LocalDate lastBefore(String id) {
        for (LocalDate day = on.minusDays(1); !day.isBefore(first); day = day.minusDays(1)) {
            if (isMet(id, day)) {
                return day;
            }
        }
        return null;
    }

    private boolean isMet(String id, LocalDate day) {
        Optional<QualificationRule> valid = rules.findValid(id, day);
        if (valid.isEmpty()) {
            return false;
        }
        QualificationRule rule = valid.get();
        Needs needs = rule.needs();
        return needs.clean().stream().allMatch(need -> clean(need.family(), day) >= need.count())
                && needs.quiz().stream()
                        .allMatch(need ->
                                counting(id, FactKind.QUIZ_PASSED, need.id(), need.days(), Needs.Kind.QUIZ, day) >= 1)
                && needs.papers().stream()
                        .allMatch(need ->
                                counting(id, FactKind.PAPER_PASSED, need.id(), need.days(), Needs.Kind.PAPERS, day)
                                        >= 1)
                && needs.demonstrations().stream()
                        .allMatch(need -> counting(
                                        id,
                                        FactKind.DEMONSTRATION,
                                        rule.card().orElseThrow(),
                                        need.days(),
                                        Needs.Kind.DEMONSTRATIONS,
                                        day)
                                >= need.count())
                && needs.prerequisites().stream().allMatch(other -> isMet(other, day) && !isHeld(other, day));
    }

    private long clean(String family, LocalDate day) {
        return facts.stream()
                .filter(fact -> fact.kind() == FactKind.CLEAN && fact.subject().equals(family))
                .filter(fact -> !fact.on().isAfter(day))
                .count();
    }

    private long counting(String id, FactKind kind, String subject, int days, Needs.Kind need, LocalDate day) {
        return facts.stream()
                .filter(fact -> fact.kind() == kind && fact.subject().equals(subject) && fact.by() != person)
                .filter(fact ->
                        !fact.on().isAfter(day) && !fact.on().plusDays(days).isBefore(day))
                .filter(fact -> !isEnded(id, fact, need, day))
                .count();
    }

    private boolean isEnded(String id, Fact fact, Needs.Kind need, LocalDate day) {
        boolean byEvent = facts.stream()
                .filter(event -> event.kind() == FactKind.EVENT && !event.on().isAfter(day))
                .filter(event -> event.on().isAfter(fact.on())
                        || (event.on().equals(fact.on()) && event.record() > fact.record()))
                .anyMatch(event -> consequences(id, event).stream()
                        .anyMatch(one -> one.again().contains(need)));
        return byEvent || active.stream().anyMatch(last -> isAbsence(id, last, fact, need, day));
    }

    private boolean isAbsence(String id, LocalDate last, Fact fact, Needs.Kind need, LocalDate day) {
        return rules.versions(id).stream()
                .flatMap(rule -> rule.consequences().stream())
                .filter(one ->
                        one.event() == EventKind.LONG_ABSENCE && one.again().contains(need))
                .anyMatch(one -> {
                    LocalDate absent = last.plusDays(one.afterDays() + 1L);
                    boolean quiet = active.subSet(last.plusDays(1), absent).isEmpty();
                    boolean counted = rules.findValid(id, absent)
                            .filter(rule -> rule.consequences().contains(one))
                            .isPresent();
                    return quiet && counted && !absent.isAfter(day) && !absent.isAfter(on) && absent.isAfter(fact.on());
                });
    }

    private List<Consequence> consequences(String id, Fact event) {
        return rules.findValid(id, event.on()).filter(rule -> concerns(rule, event.scope())).stream()
                .flatMap(rule -> rule.consequences().stream())
                .filter(one -> one.event().id().equals(event.subject()))
                .toList();
    }

    private boolean concerns(QualificationRule rule, Scope scope) {
        return scope.reach() == Scope.Reach.ALL
                || (scope.reach() == Scope.Reach.PERSON && scope.person() == person)
                || (scope.reach() == Scope.Reach.CARD && rule.card().equals(Optional.of(scope.id())))
                || (scope.reach() == Scope.Reach.PROCEDURE && rule.procedures().contains(scope.id()));
    }

    private boolean isHeld(String id, LocalDate day) {
        return facts.stream()
                .filter(fact -> !fact.on().isAfter(day))
                .filter(fact -> fact.kind() == FactKind.HOLD
                        ? rules.findValid(id, fact.on())
                                .filter(rule -> concerns(rule, fact.scope()))
                                .isPresent()
                        : fact.kind() == FactKind.EVENT
                                && consequences(id, fact).stream().anyMatch(Consequence::holds))
                .anyMatch(hold -> facts.stream().noneMatch(fact -> releases(id, fact, hold, day)));
    }

    private boolean releases(String id, Fact fact, Fact hold, LocalDate day) {
        return fact.kind() == FactKind.RELEASE
                && fact.of() == hold.record()
                && !fact.on().isAfter(day)
                && (fact.scope().equals(hold.scope())
                        || rules.findValid(id, fact.on())
                                .filter(rule -> concerns(rule, fact.scope()))
                                .isPresent());
    }

    private @Nullable LocalDate quietUntil(String id) {
        QualificationRule rule = rules.findValid(id, on).orElseThrow();
        LocalDate earliest = null;
        for (Consequence one : rule.consequences()) {
            if (one.event() == EventKind.LONG_ABSENCE && !active.isEmpty()) {
                LocalDate quiet = active.last().plusDays(one.afterDays());
                earliest = quiet.isBefore(on) ? null : quiet;
            }
        }
        for (String other : rule.needs().prerequisites()) {
            LocalDate quiet = quietUntil(other);
            earliest = earliest == null || (quiet != null && quiet.isBefore(earliest)) ? quiet : earliest;
        }
        return earliest;
    }
}
