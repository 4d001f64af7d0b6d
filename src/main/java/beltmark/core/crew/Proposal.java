package beltmark.core.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A crew for a job. As many places are filled as can be, each with another person; among all ways to do that, people who
 * stay qualified longer go first. The people are taken in that order, and each is kept if places can be found for all who
 * are kept so far: the sets of people who can be placed together form a matroid, on which taking the best one first is
 * never regretted (R. Rado 1957, J. Edmonds 1971; from memory, checked by trying all crews in the tests). Places are found
 * along augmenting paths. The same input gives the same crew.
 */
public final class Proposal {

    private static final Comparator<Optional<Candidate>> TAKEN_FIRST = (a, b) -> a.isPresent() && b.isPresent()
            ? Candidate.LONGEST_FIRST.compare(a.get(), b.get())
            : Boolean.compare(b.isPresent(), a.isPresent());

    private final List<String> places = new ArrayList<>();
    private final List<Optional<Candidate>> taken = new ArrayList<>();
    private final List<Candidate> candidates;

    private Proposal(List<Place> needed, List<Candidate> people) {
        needed.forEach(place -> {
            for (int i = 0; i < place.count(); i++) {
                places.add(place.qualification());
                taken.add(Optional.empty());
            }
        });
        candidates = people.stream().sorted(Candidate.LONGEST_FIRST).toList();
        candidates.forEach(candidate -> place(candidate, new HashSet<>()));
        sortWithinQualifications();
    }

    /** Places of one qualification stand side by side; which of them somebody found is of no meaning. */
    private void sortWithinQualifications() {
        for (int i = 0; i < places.size(); i++) {
            int from = i;
            while (i + 1 < places.size() && places.get(i + 1).equals(places.get(from))) {
                i++;
            }
            taken.subList(from, i + 1).sort(TAKEN_FIRST);
        }
    }

    /**
     * A place with whoever is proposed for it.
     *
     * @param qualification the qualification it takes
     * @param candidate who is proposed, empty when nobody is left
     * @param rank the number of this person among those who could take it, the longest qualified first, from 1
     * @param able how many could take it
     * @param elsewhere those before this person who are proposed for another place
     */
    public record Seat(
            String qualification, Optional<Candidate> candidate, int rank, int able, List<Candidate> elsewhere) {
        public Seat {
            elsewhere = List.copyOf(elsewhere);
        }
    }

    /**
     * {@return the places in the order asked for, with whoever is proposed}
     *
     * @param needed the places, each qualification once
     * @param people everybody who could take one
     */
    public static List<Seat> seats(List<Place> needed, List<Candidate> people) {
        return new Proposal(needed, people).listSeats();
    }

    /** Finds a place, if need be by moving others to other places; those keep a place always. */
    private boolean place(Candidate candidate, Set<Integer> tried) {
        for (int i = 0; i < places.size(); i++) {
            if (candidate.canTake(places.get(i)) && tried.add(i)) {
                Optional<Candidate> sitting = taken.get(i);
                if (sitting.isEmpty() || place(sitting.get(), tried)) {
                    taken.set(i, Optional.of(candidate));
                    return true;
                }
            }
        }
        return false;
    }

    private List<Seat> listSeats() {
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            seats.add(seat(places.get(i), taken.get(i)));
        }
        return List.copyOf(seats);
    }

    private Seat seat(String qualification, Optional<Candidate> sitting) {
        List<Candidate> able =
                candidates.stream().filter(one -> one.canTake(qualification)).toList();
        int rank = sitting.map(able::indexOf).orElse(able.size()) + 1;
        List<Candidate> before = able.subList(0, Math.min(rank - 1, able.size()));
        List<Candidate> elsewhere =
                before.stream().filter(one -> !takes(one, qualification)).toList();
        return new Seat(qualification, sitting, rank, able.size(), elsewhere);
    }

    private boolean takes(Candidate one, String qualification) {
        for (int i = 0; i < places.size(); i++) {
            if (places.get(i).equals(qualification)
                    && taken.get(i).filter(one::equals).isPresent()) {
                return true;
            }
        }
        return false;
    }
}
