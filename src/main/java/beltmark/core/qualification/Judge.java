package beltmark.core.qualification;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Judges where a person stands, by what was known at a moment of what had happened up to a day, and by the rules valid on
 * the days they are about. Quiz, papers and demonstrations age, and an event may end them; clean problems do not. A person
 * has lapsed who had all needs met on one day and has not on the day asked about; one who never had is in training. Being
 * held goes before everything else. Nothing recorded later changes what is answered for an earlier moment.
 */
public final class Judge {

    private final Rules rules;
    private final Known known;
    private final LocalDate on;
    private final Map<String, Qualified> qualified = new HashMap<>();

    /**
     * @param rules all rules
     * @param facts what is on record about the person
     * @param on the day asked about, past or future
     * @param asKnownAt the moment whose knowledge is asked for
     */
    public Judge(Rules rules, Facts facts, LocalDate on, Instant asKnownAt) {
        this.rules = rules;
        this.on = on;
        this.known = new Known(rules, facts, on, asKnownAt);
    }

    /** {@return where a person stands with one qualification, as the constructor and {@link #standing(String)} say} */
    public static Standing standing(Rules rules, String id, Facts facts, LocalDate on, Instant asKnownAt) {
        return new Judge(rules, facts, on, asKnownAt).standing(id);
    }

    /**
     * The days of a qualification.
     *
     * @param met the days on which all needs are met
     * @param held the times of being held back
     */
    private record Qualified(Days met, List<Known.Held> held) {

        Days valid() {
            return met.without(Days.union(held.stream().map(Known.Held::days).toList()));
        }
    }

    /** {@return where the person stands with a qualification at any time of the day} */
    public Standing standing(String id) {
        Optional<QualificationRule> rule = rules.findValid(id, on);
        if (rule.isEmpty()) {
            return new Standing(Status.IN_TRAINING, List.of(Finding.of(Reason.NO_RULE)), null, null);
        }
        Days met = qualified(id).met;
        List<NeedCheck> checks = checks(rule.get());
        List<Finding> unmet = checks.stream()
                .filter(check -> !check.days().contains(on))
                .map(NeedCheck::unmet)
                .toList();
        LocalDate lastDay =
                met.find(on).map(Days.Span::last).or(() -> met.findLast(on)).orElse(null);
        Optional<Known.Held> held = qualified(id).held.stream()
                .filter(one -> one.days().contains(on))
                .max(Comparator.comparing(Known.Held::since));
        if (held.isPresent()) {
            List<Finding> reasons = new ArrayList<>(List.of(held(held.get())));
            reasons.addAll(unmet);
            return new Standing(Status.HELD, reasons, lastDay, null);
        }
        if (!unmet.isEmpty()) {
            return new Standing(lastDay == null ? Status.IN_TRAINING : Status.LAPSED, unmet, lastDay, null);
        }
        return valid(rule.get(), checks, met.find(on).orElseThrow().last());
    }

    /** {@return what the person did of a kind, as far as it happened and was known and stands, in order of time} */
    public List<Fact> list(FactKind kind, String subject) {
        return known.list(kind, subject);
    }

    private static Finding held(Known.Held held) {
        return held.event()
                .map(event -> Finding.of(Reason.HELD_BY_EVENT).with("event", event.id()))
                .orElseGet(() -> Finding.of(Reason.HELD))
                .with("since", held.since());
    }

    private Standing valid(QualificationRule rule, List<NeedCheck> checks, LocalDate lastDay) {
        LocalDate quietUntil = findQuietUntil(rule).orElse(null);
        LocalDate window = on.plusDays(rule.dueSoonDays());
        List<Finding> soon = lastDay.isAfter(window) ? new ArrayList<>() : runningOut(checks, lastDay, window);
        if (quietUntil != null && !quietUntil.isAfter(window)) {
            soon.add(Finding.until(Reason.ABSENCE_NEAR, quietUntil));
        }
        soon.sort(Comparator.comparing(Judge::lastDay));
        return soon.isEmpty()
                ? new Standing(Status.CLEARED, List.of(Finding.until(Reason.ALL_MET, lastDay)), lastDay, quietUntil)
                : new Standing(Status.DUE_SOON, soon, lastDay(soon.get(0)), quietUntil);
    }

    /** {@return what ends within the window; a need that a new version no longer has, or not so soon, does not} */
    private List<Finding> runningOut(List<NeedCheck> checks, LocalDate lastDay, LocalDate window) {
        List<Finding> soon = new ArrayList<>();
        for (NeedCheck check : checks) {
            LocalDate last = check.days().find(on).orElseThrow().last();
            check.runsOut()
                    .filter(finding -> !last.isBefore(lastDay) && !last.isAfter(window))
                    .ifPresent(finding -> soon.add(finding.with("lastDay", last)));
        }
        if (soon.stream().noneMatch(one -> lastDay(one).equals(lastDay))) {
            soon.add(Finding.until(Reason.NEW_RULE, lastDay));
        }
        return soon;
    }

    private static LocalDate lastDay(Finding finding) {
        return (LocalDate) finding.values().getOrDefault("lastDay", Days.LAST);
    }

    /** {@return the last day before a long absence, of this rule or one it hangs on, if nothing more is recorded} */
    private Optional<LocalDate> findQuietUntil(QualificationRule rule) {
        List<LocalDate> days = new ArrayList<>();
        rule.findAbsenceDays()
                .ifPresent(most -> known.findLastActive().ifPresent(last -> days.add(last.plusDays(most))));
        for (String id : rule.needs().prerequisites()) {
            rules.findValid(id, on).flatMap(this::findQuietUntil).ifPresent(days::add);
        }
        return days.stream().filter(day -> !day.isBefore(on)).min(Comparator.naturalOrder());
    }

    private Qualified qualified(String id) {
        Qualified judged = qualified.get(id);
        if (judged == null) {
            List<Days> met = rules.versions(id).stream().map(this::met).toList();
            judged = new Qualified(Days.union(met), known.listHeld(id));
            qualified.put(id, judged);
        }
        return judged;
    }

    private Days met(QualificationRule rule) {
        Days met = rules.daysOf(rule);
        for (NeedCheck check : checks(rule)) {
            met = met.and(check.days());
        }
        return met;
    }

    private List<NeedCheck> checks(QualificationRule rule) {
        List<Known.Cut> cuts = known.listCuts(rule.id());
        Needs needs = rule.needs();
        List<NeedCheck> checks = new ArrayList<>();
        needs.clean().forEach(need -> checks.add(NeedCheck.clean(need, known)));
        needs.quiz().ifPresent(need -> checks.add(NeedCheck.quiz(need, known, cuts)));
        needs.papers().forEach(need -> checks.add(NeedCheck.paper(need, known, cuts)));
        needs.prerequisites()
                .forEach(id ->
                        checks.add(NeedCheck.prerequisite(id, qualified(id).valid())));
        needs.demonstrations()
                .ifPresent(need ->
                        checks.add(NeedCheck.demonstrations(need, rule.card().orElseThrow(), known, cuts)));
        return checks;
    }
}
