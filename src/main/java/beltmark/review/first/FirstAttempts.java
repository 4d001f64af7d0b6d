package beltmark.review.first;

import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.SmallGroups;
import java.util.List;
import java.util.Map;

/**
 * The totals over first attempts of one crew, or of all, in a period.
 *
 * @param crew the crew, 0 for all
 * @param scores how many people had each score
 * @param questions how many had each question right, by their score
 * @param misses how each question was missed, for each question the most frequent first
 * @param crewSizes how many people of each crew sat in that period
 * @param everywhere how many people of all crews were asked each question in that period
 */
public record FirstAttempts(
        long crew,
        List<ScoreCount> scores,
        List<QuestionCount> questions,
        List<MissCount> misses,
        Map<Long, Long> crewSizes,
        Map<String, Long> everywhere) {

    /** Keeps its own lists. */
    public FirstAttempts {
        scores = List.copyOf(scores);
        questions = List.copyOf(questions);
        misses = List.copyOf(misses);
        crewSizes = Map.copyOf(crewSizes);
        everywhere = Map.copyOf(everywhere);
    }

    /** {@return how many of these people passed} */
    public Proportion passed() {
        return new Proportion(
                scores.stream().mapToLong(ScoreCount::passed).sum(),
                scores.stream().mapToLong(ScoreCount::people).sum());
    }

    /** {@return whether there are too few people, here or in another crew that could then be worked out} */
    public boolean isHeldBack() {
        return !passed().isLargeEnough()
                || (crew != 0 && SmallGroups.heldBack(crewSizes).contains(crew));
    }

    /** Whether so many people were asked a question here and in the other crews that its share may be told. */
    boolean mayTell(String question, long people) {
        long others = everywhere.getOrDefault(question, people) - people;
        return !isHeldBack()
                && people >= Proportion.SMALLEST_GROUP
                && (crew == 0 || others == 0 || others >= Proportion.SMALLEST_GROUP);
    }

    /**
     * How many people had a score.
     *
     * @param asked how many questions their paper had
     * @param score how many were right
     * @param people how many people
     * @param passed how many of them passed
     */
    public record ScoreCount(int asked, int score, long people, long passed) {}

    /**
     * How many people with a score had a question right.
     *
     * @param question the id of the question
     * @param asked how many questions their paper had
     * @param score how many were right
     * @param hits how many had it right of how many asked
     */
    public record QuestionCount(String question, int asked, int score, Proportion hits) {}

    /**
     * How many people missed an option in one way.
     *
     * @param question the id of the question
     * @param kind in which way: {@code chosen}, {@code left-out} or {@code too-early}
     * @param option the id of the option
     * @param people how many
     */
    public record MissCount(String question, String kind, String option, long people) {}
}
