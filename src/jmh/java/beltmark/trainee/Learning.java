package beltmark.trainee;

import beltmark.core.mastery.KnowledgeTracing;
import beltmark.core.mastery.NextDrill;
import beltmark.core.mastery.NextDrill.Candidate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** How many problems it takes until a learner has mastered every family, four a day. */
public final class Learning {

    private static final int A_DAY = 4;
    private static final LocalDate START = LocalDate.of(2026, 3, 2);

    /** Nobody needs that many; it only ends a run that would not. */
    private static final int MOST_DAYS = 20_000;

    private final List<String> families;
    private final Map<String, Learner> learners = new TreeMap<>();
    private int next;

    private Learning(Map<String, Double> guesses, SplittableRandom random) {
        this.families = List.copyOf(guesses.keySet());
        guesses.forEach(
                (family, guess) -> learners.put(family, new Learner(KnowledgeTracing.ofGuess(guess), START, random)));
    }

    /** What is worked next. */
    public enum Order {
        /** What the drill of the day picks. */
        NEXT_DRILL,
        /** One family after the other, round and round. */
        FIXED,
        /** The same, leaving out what has been mastered: an order that is not quite fixed. */
        FIXED_WITHOUT_MASTERED
    }

    /**
     * Lets people learn; the same people, with the same chances to learn, for every order.
     *
     * @param guesses how likely somebody is right by guessing, by family, in the order taught
     * @return the median number of problems of so many learners
     */
    public static long median(Map<String, Double> guesses, Order order, int learners, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long[] needed = new long[learners];
        for (int i = 0; i < learners; i++) {
            SplittableRandom own = random.split();
            needed[i] = new Learning(guesses, own.split()).problems(order, own);
        }
        Arrays.sort(needed);
        return needed[learners / 2];
    }

    private long problems(Order order, SplittableRandom random) {
        long problems = 0;
        for (int i = 0; i < MOST_DAYS; i++) {
            LocalDate day = START.plusDays(i);
            for (String family : order == Order.NEXT_DRILL ? drill(day) : round(order)) {
                learner(family).work(day, random);
                problems++;
                if (learners.values().stream().allMatch(Learner::hasMastered)) {
                    return problems;
                }
            }
        }
        throw new IllegalStateException("not mastered after " + problems + " problems");
    }

    private List<String> drill(LocalDate day) {
        List<Candidate> candidates = families.stream()
                .map(family -> new Candidate(family, learner(family).state(), Optional.empty(), 0))
                .toList();
        return NextDrill.pick(candidates, day, A_DAY).stream()
                .map(NextDrill.Pick::family)
                .toList();
    }

    private List<String> round(Order order) {
        List<String> picked = new ArrayList<>();
        for (int i = 0; i < families.size() && picked.size() < A_DAY; i++) {
            String family = families.get(next++ % families.size());
            if (order == Order.FIXED || !learner(family).hasMastered()) {
                picked.add(family);
            }
        }
        return picked;
    }

    private Learner learner(String family) {
        return Optional.ofNullable(learners.get(family)).orElseThrow();
    }
}
