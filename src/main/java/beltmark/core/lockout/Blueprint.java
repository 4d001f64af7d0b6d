package beltmark.core.lockout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The plan of a paper: one critical question on each point, then so many others from each topic, drawn anew for every
 * sitting. Where a topic has too few under the site's rule sets, others take their places; a point nobody can be asked
 * about falls away.
 *
 * @param id the name of the quiz
 * @param version 1, 2, … ; another plan makes a new version
 * @param audience for whom it is, authorized or affected
 * @param passPercent the share of right answers that passes, 1..100 percent; no rule names one, it is site policy
 * @param fewest a paper of fewer questions than this is not opened
 * @param points the critical points, at most {@value #MOST_POINTS}
 * @param topics how many others from each topic
 */
public record Blueprint(
        String id,
        int version,
        Audience audience,
        int passPercent,
        int fewest,
        List<String> points,
        Map<String, Integer> topics) {

    /** With .95 on each, five critical questions are all right only 77 % of the time: more would fail nearly everyone. */
    public static final int MOST_POINTS = 5;

    /** Sets the draw apart from the order, which follows from the same seed. */
    private static final long DRAW = 0x6472_6177L;

    /** Refuses too many points and an audience that no person belongs to. */
    public Blueprint {
        points = List.copyOf(points);
        topics = new LinkedHashMap<>(topics);
        if (points.size() > MOST_POINTS || audience == Audience.BOTH || fewest < 1) {
            throw new IllegalArgumentException(
                    "paper " + id + ": " + points.size() + " points, for " + audience.id() + ", at least " + fewest);
        }
    }

    /** {@return how many questions the paper has} */
    public int size() {
        return points.size()
                + topics.values().stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * Draws a paper.
     *
     * @param allowed the questions that may be asked at the site
     * @param seed any number; the same one draws the same paper from the same questions
     * @return the questions in no order of meaning, as many as {@link #size} where there are enough
     */
    public List<Question> draw(List<BankQuestion> allowed, long seed) {
        Random random = SittingOrder.random(seed ^ DRAW);
        List<BankQuestion> pool = SittingOrder.shuffled(
                allowed.stream()
                        .filter(question -> question.audience().fits(audience))
                        .toList(),
                random);
        Drawn drawn = new Drawn();
        for (String point : points) {
            drawn.take(pool, question -> point.equals(question.point()), 1);
        }
        topics.forEach((topic, count) -> drawn.take(
                pool, question -> question.point() == null && question.topic().equals(topic), count));
        drawn.take(pool, question -> question.point() == null, size() - drawn.questions.size());
        return drawn.questions;
    }

    /** What is drawn so far; of questions on the same fact only one is taken as long as there are others. */
    private static final class Drawn {

        private final List<Question> questions = new ArrayList<>();
        private final Set<String> ids = new HashSet<>();
        private final Set<String> facts = new HashSet<>();

        void take(List<BankQuestion> pool, Predicate<BankQuestion> wanted, int count) {
            int end = questions.size() + count;
            List<BankQuestion> candidates = pool.stream().filter(wanted).toList();
            candidates.stream().filter(this::isOnNewFacts).forEach(question -> add(question, end, true));
            candidates.forEach(question -> add(question, end, false));
        }

        private boolean isOnNewFacts(BankQuestion question) {
            return question.question().source().facts().stream().noneMatch(facts::contains);
        }

        private void add(BankQuestion drawn, int end, boolean onNewFacts) {
            if (questions.size() < end && (!onNewFacts || isOnNewFacts(drawn)) && ids.add(drawn.id())) {
                questions.add(drawn.question());
                facts.addAll(drawn.question().source().facts());
            }
        }
    }
}
