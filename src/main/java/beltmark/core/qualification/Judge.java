package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Judges where a person stands. Quiz and demonstrations age; clean problems do not, and are taken as worked before either
 * of them. A person has lapsed who had all needs met on one day and has not on the day asked about; one who never had is
 * in training. Being held goes before everything else.
 */
public final class Judge {

    private final QualificationRule rule;
    private final Facts facts;
    private final LocalDate date;
    private final List<Span> quiz;
    private final List<Span> shown;
    private final int counting;

    private Judge(QualificationRule rule, Facts facts, LocalDate date) {
        this.rule = rule;
        this.facts = facts;
        this.date = date;
        List<LocalDate> demonstrated = upToDate(facts.demonstratedOn(rule.card()));
        this.counting = (int) demonstrated.stream()
                .filter(on -> !on.plusDays(rule.lifeDays()).isBefore(date))
                .count();
        this.quiz = Span.of(upToDate(facts.quizPassed()), 1, rule.quizDays());
        this.shown = Span.of(demonstrated, rule.demonstrations(), rule.lifeDays());
    }

    /**
     * Judges one person by one rule.
     *
     * @param rule the rule valid on the date
     * @param facts what the records say
     * @param date the date asked about
     * @return where the person stands at any time of that day
     */
    public static Standing standing(QualificationRule rule, Facts facts, LocalDate date) {
        return new Judge(rule, facts, date).standing();
    }

    private List<LocalDate> upToDate(List<LocalDate> dates) {
        return dates.stream().filter(on -> !on.isAfter(date)).toList();
    }

    private Standing standing() {
        Optional<Facts.Hold> hold = facts.findHold(date);
        List<Finding> unmet = unmet();
        Optional<Span> last = lastSpan();
        LocalDate lastDay = last.map(Span::last).orElse(null);
        if (hold.isPresent()) {
            List<Finding> reasons = new ArrayList<>(
                    List.of(Finding.of(Reason.HELD).with("since", hold.get().from())));
            reasons.addAll(unmet);
            return new Standing(Status.HELD, reasons, lastDay);
        }
        if (!unmet.isEmpty()) {
            return new Standing(lastDay == null ? Status.IN_TRAINING : Status.LAPSED, unmet, lastDay);
        }
        return valid(last.orElseThrow());
    }

    private Standing valid(Span span) {
        List<Finding> soon = runningOut();
        return soon.isEmpty()
                ? new Standing(Status.CLEARED, List.of(Finding.until(Reason.ALL_MET, span.last())), span.last())
                : new Standing(Status.DUE_SOON, soon, span.last());
    }

    private List<Finding> unmet() {
        List<Finding> unmet = new ArrayList<>();
        for (CleanNeed need : rule.clean()) {
            int have = facts.clean().getOrDefault(need.family(), 0);
            if (have < need.count()) {
                unmet.add(
                        Finding.count(Reason.TOO_FEW_CLEAN, have, need.count()).with("family", need.family()));
            }
        }
        if (quiz.isEmpty()) {
            unmet.add(Finding.of(Reason.QUIZ_NOT_PASSED));
        } else {
            ranOut(Reason.QUIZ_RAN_OUT, quiz).ifPresent(unmet::add);
        }
        if (shown.isEmpty()) {
            unmet.add(Finding.count(Reason.TOO_FEW_DEMONSTRATIONS, counting, rule.demonstrations()));
        } else {
            ranOut(Reason.DEMONSTRATION_RAN_OUT, shown).ifPresent(unmet::add);
        }
        return unmet;
    }

    private Optional<Finding> ranOut(Reason reason, List<Span> spans) {
        return Span.latest(spans)
                .filter(span -> span.last().isBefore(date))
                .map(span -> Finding.until(reason, span.last()));
    }

    /** {@return what runs out within the window, the earliest first} */
    private List<Finding> runningOut() {
        List<Finding> soon = new ArrayList<>();
        runsOut(Reason.QUIZ_RUNS_OUT, quiz).ifPresent(soon::add);
        runsOut(Reason.DEMONSTRATION_RUNS_OUT, shown).ifPresent(soon::add);
        soon.sort(Comparator.comparing(finding -> (LocalDate) finding.values().get("lastDay")));
        return soon;
    }

    private Optional<Finding> runsOut(Reason reason, List<Span> spans) {
        return Span.latest(spans)
                .filter(span -> !span.last().minusDays(rule.dueSoonDays()).isAfter(date))
                .map(span -> Finding.until(reason, span.last()));
    }

    /** {@return the days on which all needs are met together, those that end last; empty when there never were any} */
    private Optional<Span> lastSpan() {
        boolean practised =
                rule.clean().stream().allMatch(need -> facts.clean().getOrDefault(need.family(), 0) >= need.count());
        return practised
                ? Span.latest(quiz.stream()
                        .flatMap(one -> shown.stream().flatMap(other -> one.overlap(other).stream()))
                        .toList())
                : Optional.empty();
    }
}
