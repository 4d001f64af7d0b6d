package beltmark.core.crew;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ProposalTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 5);
    private static final String FIT = "fit";
    private static final String LOCK = "lock";
    private static final List<Place> TWO_AND_ONE = List.of(new Place(FIT, 2), new Place(LOCK, 1));

    @Test
    void takesWhoStaysQualifiedLongest() {
        List<Candidate> people = List.of(one(1, "Ana", FIT, 10), one(2, "Bo", FIT, 30), one(3, "Cy", FIT, 20));
        assertEquals(List.of("Bo", "Cy", "-"), names(TWO_AND_ONE, people));
    }

    @Test
    void movesSomebodyToAnotherPlaceSoThatAllAreTaken() {
        List<Candidate> people = List.of(both(1, "Ana", 90, 95), one(2, "Bo", FIT, 30), one(3, "Cy", FIT, 20));
        assertEquals(List.of("Bo", "Cy", "Ana"), names(TWO_AND_ONE, people));
    }

    @Test
    void proposesNobodyForTwoPlaces() {
        assertEquals(List.of("Ana", "-", "-"), names(TWO_AND_ONE, List.of(both(1, "Ana", 90, 95))));
    }

    @Test
    void saysWhoIsPassedOverForAnotherPlace() {
        List<Candidate> people = List.of(both(1, "Ana", 90, 95), one(2, "Bo", FIT, 30));
        Proposal.Seat fit = Proposal.seats(List.of(new Place(FIT, 1), new Place(LOCK, 1)), people)
                .get(0);
        assertEquals("Bo", fit.candidate().orElseThrow().name());
        assertEquals(
                List.of("Ana"), fit.elsewhere().stream().map(Candidate::name).toList());
        assertEquals(2, fit.rank());
        assertEquals(2, fit.able());
    }

    @Test
    void peopleWithTheSameLastDayGoByName() {
        List<Candidate> people = List.of(one(2, "Bo", FIT, 30), one(9, "Ana", FIT, 30), one(1, "Bo", FIT, 30));
        List<Proposal.Seat> seats = Proposal.seats(List.of(new Place(FIT, 3)), people);
        assertEquals(
                List.of(9L, 1L, 2L),
                seats.stream()
                        .map(seat -> seat.candidate().orElseThrow().person())
                        .sorted((a, b) -> Long.compare(rank(seats, a), rank(seats, b)))
                        .toList());
    }

    private static int rank(List<Proposal.Seat> seats, long person) {
        return seats.stream()
                .filter(seat -> seat.candidate().orElseThrow().person() == person)
                .findFirst()
                .orElseThrow()
                .rank();
    }

    @Test
    void noCrewOfAllThereAreIsBetter() {
        Random random = new Random(5);
        for (int i = 0; i < 2_000; i++) {
            List<Candidate> people = randomPeople(random);
            List<Place> places = List.of(
                    new Place(FIT, random.nextInt(3)), new Place(LOCK, random.nextInt(3)), new Place("drive", 1));
            List<Proposal.Seat> seats = Proposal.seats(places, people);
            List<Candidate> chosen = seats.stream()
                    .flatMap(seat -> seat.candidate().stream())
                    .sorted(Candidate.LONGEST_FIRST)
                    .toList();
            assertEquals(chosen.size(), new HashSet<>(chosen).size(), "nobody twice");
            seats.forEach(seat -> seat.candidate().ifPresent(one -> assertTrue(one.canTake(seat.qualification()))));
            assertEquals(best(seats, people), chosen, () -> places + " " + people);
        }
    }

    @Test
    void theOrderInWhichPeopleAreToldDoesNotMatter() {
        Random random = new Random(6);
        for (int i = 0; i < 500; i++) {
            List<Candidate> people = randomPeople(random);
            List<Candidate> shuffled = new ArrayList<>(people);
            Collections.shuffle(shuffled, random);
            assertEquals(Proposal.seats(TWO_AND_ONE, people), Proposal.seats(TWO_AND_ONE, shuffled));
        }
    }

    /** All crews there are: as many people as can be, and of those the first in order. */
    private static List<Candidate> best(List<Proposal.Seat> seats, List<Candidate> people) {
        List<Candidate> best = List.of();
        List<Candidate> ordered =
                people.stream().sorted(Candidate.LONGEST_FIRST).toList();
        for (int bits = 0; bits < 1 << ordered.size(); bits++) {
            List<Candidate> crew = new ArrayList<>();
            for (int i = 0; i < ordered.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    crew.add(ordered.get(i));
                }
            }
            boolean fits = canSit(seats, crew, 0, new HashSet<>());
            if (fits && (crew.size() > best.size() || (crew.size() == best.size() && comesFirst(crew, best)))) {
                best = crew;
            }
        }
        return best;
    }

    private static boolean comesFirst(List<Candidate> crew, List<Candidate> other) {
        for (int i = 0; i < crew.size(); i++) {
            int order = Candidate.LONGEST_FIRST.compare(crew.get(i), other.get(i));
            if (order != 0) {
                return order < 0;
            }
        }
        return false;
    }

    private static boolean canSit(List<Proposal.Seat> seats, List<Candidate> crew, int next, Set<Integer> used) {
        if (next == crew.size()) {
            return true;
        }
        for (int i = 0; i < seats.size(); i++) {
            if (crew.get(next).canTake(seats.get(i).qualification()) && used.add(i)) {
                if (canSit(seats, crew, next + 1, used)) {
                    return true;
                }
                used.remove(i);
            }
        }
        return false;
    }

    private static List<Candidate> randomPeople(Random random) {
        List<Candidate> people = new ArrayList<>();
        for (int i = random.nextInt(8); i > 0; i--) {
            Map<String, LocalDate> days = new HashMap<>();
            for (String qualification : List.of(FIT, LOCK, "drive")) {
                if (random.nextInt(3) > 0) {
                    days.put(qualification, DAY.plusDays(random.nextInt(6)));
                }
            }
            if (!days.isEmpty()) {
                people.add(new Candidate(i, "P" + random.nextInt(4), days));
            }
        }
        return people;
    }

    private static List<String> names(List<Place> places, List<Candidate> people) {
        return Proposal.seats(places, people).stream()
                .map(seat -> seat.candidate().map(Candidate::name).orElse("-"))
                .toList();
    }

    private static Candidate one(long person, String name, String qualification, int days) {
        return new Candidate(person, name, Map.of(qualification, DAY.plusDays(days)));
    }

    private static Candidate both(long person, String name, int fit, int lock) {
        return new Candidate(person, name, Map.of(FIT, DAY.plusDays(fit), LOCK, DAY.plusDays(lock)));
    }
}
