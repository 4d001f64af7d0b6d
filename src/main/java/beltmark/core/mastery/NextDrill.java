package beltmark.core.mastery;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Puts together what to practise today: what is due, most overdue first, on at most half of the places while anything else
 * is left to learn; then habits to be broken; then the weakest skills.
 */
public final class NextDrill {

    private NextDrill() {}

    /** Why a family was picked. */
    public enum Why {
        /** A slip of it has become a habit. */
        HABIT,
        /** Its day on the ladder has come. */
        DUE,
        /** It is the weakest of those begun. */
        WEAKEST,
        /** It was never worked. */
        NEW,
        /** It is the longest ago, where nothing else is left. */
        KEEP_UP;

        /** {@return the hyphenated name used in text keys} */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * A family and where a person stands with it.
     *
     * @param family the family's id
     * @param state what the answers show; the start before the first
     * @param habit the path of a slip that has become a habit, if there is one
     * @param difficulty how hard the family is in practice, in logits; easier ones are begun first
     */
    public record Candidate(String family, SkillState state, Optional<String> habit, double difficulty) {}

    /**
     * A pick.
     *
     * @param family the family's id
     * @param why the reason
     * @param of the candidate that was picked
     */
    public record Pick(String family, Why why, Candidate of) {}

    /**
     * Picks.
     *
     * @param candidates the families open to the person, in the order in which they are taught
     * @param day the day of practice
     * @param places how many problems there is time for, at least 1
     * @return at most so many picks, no family twice
     */
    public static List<Pick> pick(List<Candidate> candidates, LocalDate day, int places) {
        List<Pick> picks = new ArrayList<>();
        List<Candidate> habits =
                candidates.stream().filter(one -> one.habit().isPresent()).toList();
        List<Candidate> due = candidates.stream()
                .filter(one -> one.state().isDue(day))
                .sorted(Comparator.comparing(
                        one -> Optional.ofNullable(one.state().dueOn()).orElse(day)))
                .toList();
        List<Candidate> weak = candidates.stream()
                .filter(one -> one.state().answers() > 0 && !one.state().isMastered())
                .sorted(Comparator.comparingDouble(one -> one.state().known()))
                .toList();
        List<Candidate> fresh = candidates.stream()
                .filter(one -> one.state().answers() == 0)
                .sorted(Comparator.comparingDouble(Candidate::difficulty))
                .toList();
        boolean onlyReviews = habits.isEmpty() && weak.isEmpty() && fresh.isEmpty();
        add(picks, habits, Why.HABIT, places);
        add(picks, due, Why.DUE, onlyReviews ? places : Math.min(places, picks.size() + Math.max(1, places / 2)));
        add(picks, weak, Why.WEAKEST, places);
        add(picks, fresh, Why.NEW, places);
        add(picks, due, Why.DUE, places);
        add(picks, candidates, Why.KEEP_UP, places);
        return picks;
    }

    private static void add(List<Pick> picks, List<Candidate> from, Why why, int upTo) {
        for (Candidate one : from) {
            boolean there = picks.stream().anyMatch(pick -> pick.family().equals(one.family()));
            if (!there && picks.size() < upTo) {
                picks.add(new Pick(one.family(), why, one));
            }
        }
    }
}
