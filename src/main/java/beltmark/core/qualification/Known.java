package beltmark.core.qualification;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was known at a moment of what had happened up to a day, of one person. */
final class Known {

    private final Rules rules;
    private final long person;
    private final LocalDate on;
    private final List<Fact> facts;
    private final List<Fact> withdrawals;
    private final List<Activity> activity;

    Known(Rules rules, Facts all, LocalDate on, Instant asKnownAt) {
        this.rules = rules;
        this.person = all.person();
        this.on = on;
        List<Fact> told = all.facts().stream()
                .filter(fact -> !fact.knownAt().isAfter(asKnownAt))
                .sorted(Fact.BY_TIME)
                .toList();
        // a withdrawal says that something never counted, so it also reaches days before it
        this.withdrawals =
                told.stream().filter(fact -> fact.kind() == FactKind.WITHDRAWAL).toList();
        this.facts = told.stream().filter(fact -> !fact.on().isAfter(on)).toList();
        this.activity = all.activity().stream()
                .filter(one -> !one.knownAt().isAfter(asKnownAt) && !one.day().isAfter(on))
                .sorted(Comparator.comparing(Activity::day))
                .toList();
    }

    /**
     * An event after which some needs must be met again.
     *
     * @param on its day
     * @param record its record; 0 for an absence, which comes before all else on its day
     * @param event what happened
     * @param again the needs
     */
    record Cut(LocalDate on, long record, EventKind event, Set<Needs.Kind> again) {

        static final Comparator<Cut> BY_TIME = Comparator.comparing(Cut::on).thenComparingLong(Cut::record);

        boolean isAfter(Fact fact) {
            return on.isAfter(fact.on()) || (on.equals(fact.on()) && record > fact.record());
        }
    }

    /** A time of being held back: its days, and the event behind it if the rule made it one. */
    record Held(Days days, LocalDate since, Optional<EventKind> event) {}

    LocalDate on() {
        return on;
    }

    /** {@return what the person did of a kind, in order} */
    List<Fact> list(FactKind kind, String subject) {
        return facts.stream()
                .filter(fact -> fact.kind() == kind && fact.subject().equals(subject))
                .filter(fact -> fact.scope().person() == person && fact.by() != person)
                .filter(fact -> !isWithdrawn(fact))
                .toList();
    }

    private boolean isWithdrawn(Fact fact) {
        return withdrawals.stream()
                .anyMatch(one ->
                        one.of() == fact.record() && (one.scope().equals(fact.scope()) || concernsPerson(one.scope())));
    }

    private boolean concernsPerson(Scope scope) {
        return scope.reach() == Scope.Reach.ALL || scope.person() == person;
    }

    /** {@return the events that ended what counted for a qualification, in order} */
    List<Cut> listCuts(String id) {
        List<Cut> cuts = new ArrayList<>();
        for (Fact fact : facts) {
            if (fact.kind() == FactKind.EVENT && !isWithdrawn(fact)) {
                consequences(id, fact)
                        .filter(one -> !one.holds())
                        .forEach(one -> cuts.add(new Cut(fact.on(), fact.record(), one.event(), one.again())));
            }
        }
        rules.versions(id).forEach(rule -> cuts.addAll(absences(rule)));
        cuts.sort(Cut.BY_TIME);
        return cuts;
    }

    /** {@return what an event led to by the version of the rule that was valid on its day} */
    private Stream<Consequence> consequences(String id, Fact event) {
        return rules.findValid(id, event.on()).stream()
                .filter(rule -> rule.isConcernedBy(event.scope(), person))
                .flatMap(rule -> rule.consequences().stream())
                .filter(one -> one.event().id().equals(event.subject()));
    }

    private List<Cut> absences(QualificationRule rule) {
        List<Cut> cuts = new ArrayList<>();
        Days valid = rules.daysOf(rule);
        for (Consequence one : rule.consequences()) {
            if (one.event() == EventKind.LONG_ABSENCE) {
                listAbsences(one.afterDays()).stream()
                        .filter(valid::contains)
                        .forEach(day -> cuts.add(new Cut(day, 0, one.event(), one.again())));
            }
        }
        return cuts;
    }

    /** {@return the days on which more than so many had gone by without anything on record} */
    private List<LocalDate> listAbsences(int days) {
        List<LocalDate> begun = new ArrayList<>();
        NavigableSet<LocalDate> active = activeDays();
        for (LocalDate day : active) {
            LocalDate until = active.higher(day);
            if (until == null || until.isAfter(day.plusDays(days))) {
                LocalDate absent = day.plusDays(days + 1L);
                if (!absent.isAfter(on) && isFollowed(day, until)) {
                    begun.add(absent);
                }
            }
        }
        return begun;
    }

    /** {@return whether nothing is on record between two days; only days after a gap tell that of the days before them} */
    private boolean isFollowed(LocalDate day, @Nullable LocalDate until) {
        return until == null
                || activity.stream()
                        .anyMatch(one -> one.day().equals(until)
                                && !one.day().minusDays(one.gapDays()).isAfter(day));
    }

    private NavigableSet<LocalDate> activeDays() {
        NavigableSet<LocalDate> days = new TreeSet<>();
        for (Activity one : activity) {
            days.add(one.day());
            if (one.gapDays() > 0) {
                days.add(one.day().minusDays(one.gapDays()));
            }
        }
        return days;
    }

    /** {@return the last day with anything on record} */
    Optional<LocalDate> findLastActive() {
        return activity.isEmpty()
                ? Optional.empty()
                : Optional.of(activity.get(activity.size() - 1).day());
    }

    /** {@return the times of being held back from a qualification} */
    List<Held> listHeld(String id) {
        List<Held> held = new ArrayList<>();
        for (Fact fact : facts) {
            boolean own = fact.kind() == FactKind.HOLD && isConcerned(id, fact);
            boolean byRule =
                    fact.kind() == FactKind.EVENT && consequences(id, fact).anyMatch(Consequence::holds);
            if ((own || byRule) && !isWithdrawn(fact)) {
                Days days = Days.of(fact.on(), lastHeld(id, fact));
                held.add(new Held(days, fact.on(), EventKind.find(fact.subject())));
            }
        }
        return held;
    }

    private boolean isConcerned(String id, Fact fact) {
        return rules.findValid(id, fact.on())
                .filter(rule -> rule.isConcernedBy(fact.scope(), person))
                .isPresent();
    }

    private LocalDate lastHeld(String id, Fact hold) {
        return facts.stream()
                .filter(fact -> fact.kind() == FactKind.RELEASE && fact.of() == hold.record() && !isWithdrawn(fact))
                .filter(fact -> fact.scope().equals(hold.scope()) || isConcerned(id, fact))
                .map(fact -> fact.on().minusDays(1))
                .min(Comparator.naturalOrder())
                .orElse(Days.LAST);
    }
}
