package beltmark.core.qualification;

import beltmark.core.qualification.Known.Cut;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One need of one person: the days on which it is met as far as things are known, and what to say about it.
 *
 * @param days the days on which it is met
 * @param unmet what to say when it is not met on the day asked about
 * @param runsOut how to say that it will not be met for much longer; empty when it does not age
 */
record NeedCheck(Days days, Finding unmet, Optional<Finding> runsOut) {

    /** {@return so many clean problems: met for ever from the day of the last one needed} */
    static NeedCheck clean(CleanNeed need, Known known) {
        List<Fact> worked = known.list(FactKind.CLEAN, need.family());
        Days days = worked.size() < need.count()
                ? Days.NONE
                : Days.of(worked.get(need.count() - 1).on(), Days.LAST);
        int have = Math.min(worked.size(), need.count());
        Finding few = Finding.count(Reason.TOO_FEW_CLEAN, have, need.count()).with("family", need.family());
        return new NeedCheck(days, few, Optional.empty());
    }

    /** {@return a pass of the quiz} */
    static NeedCheck quiz(Needs.Pass need, Known known, List<Cut> cuts) {
        Dated dated = new Dated(known.list(FactKind.QUIZ_PASSED, need.id()), 1, need.days(), of(Needs.Kind.QUIZ, cuts));
        Finding never = Finding.of(Reason.QUIZ_NOT_PASSED);
        return dated.check(known.on(), never, Reason.QUIZ_RAN_OUT, Reason.QUIZ_AFTER_EVENT, Reason.QUIZ_RUNS_OUT);
    }

    /** {@return a pass of a paper} */
    static NeedCheck paper(Needs.Pass need, Known known, List<Cut> cuts) {
        Dated dated =
                new Dated(known.list(FactKind.PAPER_PASSED, need.id()), 1, need.days(), of(Needs.Kind.PAPERS, cuts));
        Finding never = Finding.of(Reason.PAPER_NOT_PASSED);
        NeedCheck check =
                dated.check(known.on(), never, Reason.PAPER_RAN_OUT, Reason.PAPER_AFTER_EVENT, Reason.PAPER_RUNS_OUT);
        return new NeedCheck(
                check.days,
                check.unmet.with("paper", need.id()),
                check.runsOut.map(finding -> finding.with("paper", need.id())));
    }

    /** {@return demonstrations on a card} */
    static NeedCheck demonstrations(Needs.Demonstrations need, String card, Known known, List<Cut> cuts) {
        List<Cut> own = of(Needs.Kind.DEMONSTRATIONS, cuts);
        Dated dated = new Dated(known.list(FactKind.DEMONSTRATION, card), need.count(), need.days(), own);
        Finding few = Finding.count(Reason.TOO_FEW_DEMONSTRATIONS, dated.counting(known.on()), need.count());
        return dated.check(
                known.on(),
                few,
                Reason.DEMONSTRATION_RAN_OUT,
                Reason.DEMONSTRATION_AFTER_EVENT,
                Reason.DEMONSTRATION_RUNS_OUT);
    }

    /** {@return another qualification, with the days on which the person has it} */
    static NeedCheck prerequisite(String id, Days valid) {
        return new NeedCheck(
                valid,
                Finding.of(Reason.PREREQUISITE_MISSING).with("qualification", id),
                Optional.of(Finding.of(Reason.PREREQUISITE_RUNS_OUT).with("qualification", id)));
    }

    private static List<Cut> of(Needs.Kind kind, List<Cut> cuts) {
        return cuts.stream().filter(cut -> cut.again().contains(kind)).toList();
    }

    /** Passes or demonstrations, of which so many must count together, each for so many days and up to the next cut. */
    private record Dated(List<Fact> facts, int count, int days, List<Cut> cuts) {

        Days met() {
            List<Days> met = new ArrayList<>();
            for (int end = count; end <= facts.size(); end++) {
                // in order of time, so the first of them is the first to stop counting
                met.add(Days.of(facts.get(end - 1).on(), last(facts.get(end - count))));
            }
            return Days.union(met);
        }

        LocalDate last(Fact fact) {
            LocalDate aged = fact.on().plusDays(days);
            return findCut(fact)
                    .map(cut -> cut.on().minusDays(1))
                    .filter(cut -> cut.isBefore(aged))
                    .orElse(aged);
        }

        /** {@return the first event after a fact that ends it} */
        Optional<Cut> findCut(Fact fact) {
            return cuts.stream().filter(cut -> cut.isAfter(fact)).findFirst();
        }

        int counting(LocalDate on) {
            return (int) facts.stream().filter(fact -> !last(fact).isBefore(on)).count();
        }

        NeedCheck check(LocalDate on, Finding never, Reason ranOut, Reason afterEvent, Reason runsOut) {
            Days met = met();
            return new NeedCheck(met, unmet(met, on, never, ranOut, afterEvent), Optional.of(Finding.of(runsOut)));
        }

        private Finding unmet(Days met, LocalDate on, Finding never, Reason ranOut, Reason afterEvent) {
            Optional<Cut> cut = facts.isEmpty()
                    ? Optional.empty()
                    : findCut(facts.get(facts.size() - 1)).filter(one -> wouldCount(on));
            if (cut.isPresent()) {
                return Finding.of(afterEvent)
                        .with("event", cut.get().event().id())
                        .with("since", cut.get().on());
            }
            return met.findLast(on).map(last -> Finding.until(ranOut, last)).orElse(never);
        }

        /** {@return whether the last of them would still count, but for the event} */
        private boolean wouldCount(LocalDate on) {
            return facts.size() >= count
                    && !facts.get(facts.size() - count).on().plusDays(days).isBefore(on);
        }
    }
}
