package beltmark.core.lockout;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One question with its key. Options are known by ids that say nothing about the key.
 *
 * @param id the name of the question, unique in its quiz
 * @param kind what is asked
 * @param critical whether missing it fails the quiz whatever the score
 * @param options the ids of all options, at least 2 (3 to put in order), each once; all pairs of a match
 * @param right one option of a choice; the right options of several-of and of spots, at least 1; all items in the right
 *     order; the right pairs of a match, one for each row and column
 * @param source where it comes from
 * @param match what is matched, null for the other kinds
 * @param told its words where the site entered them, null where they are all in the text files
 */
public record Question(
        String id,
        QuestionKind kind,
        boolean critical,
        List<String> options,
        List<String> right,
        Source source,
        @Nullable Match match,
        @Nullable Told told) {

    /** The fewest items that can be put in order. */
    public static final int FEWEST_IN_ORDER = 3;

    private static final int FEWEST_OPTIONS = 2;

    /** Refuses a key that does not fit the options or the kind. */
    public Question {
        options = List.copyOf(options);
        right = List.copyOf(right);
        requireDistinct(id, options);
        requireDistinct(id, right);
        if ((match != null) != (kind == QuestionKind.MATCH) || (match != null && !match.isAnsweredBy(right))) {
            throw new IllegalArgumentException("question " + id + ": " + right + " is no full match");
        }
        if (options.size() < fewest(kind) || !options.containsAll(right) || !fits(kind, options.size(), right.size())) {
            throw new IllegalArgumentException(
                    "question " + id + ": key " + right + " does not fit " + kind + " of " + options);
        }
    }

    /** A question of any kind but a match. */
    public Question(
            String id, QuestionKind kind, boolean critical, List<String> options, List<String> right, Source source) {
        this(id, kind, critical, options, right, source, null, null);
    }

    /** {@return a question that asks for pairs} */
    public static Question ofMatch(String id, boolean critical, Match match, List<String> right, Source source) {
        return new Question(id, QuestionKind.MATCH, critical, match.pairs(), right, source, match, null);
    }

    /** {@return what is matched, of a question of that kind} */
    public Match getMatch() {
        return Optional.ofNullable(match).orElseThrow(() -> new IllegalStateException(id + " matches nothing"));
    }

    /** {@return the same question, critical or not} */
    public Question asCritical(boolean isCritical) {
        return new Question(id, kind, isCritical, options, right, source, match, told);
    }

    /** {@return the fewest options of a question of that kind} */
    public static int fewest(QuestionKind kind) {
        return kind == QuestionKind.PUT_IN_ORDER ? FEWEST_IN_ORDER : FEWEST_OPTIONS;
    }

    /** {@return whether a key of that many options fits a question of that kind} */
    public static boolean fits(QuestionKind kind, int options, int right) {
        return switch (kind) {
            case CHOICE -> right == 1;
            case SEVERAL_OF, SPOTS, MATCH -> right >= 1;
            case PUT_IN_ORDER -> right == options;
        };
    }

    private static void requireDistinct(String id, List<String> ids) {
        if (new HashSet<>(ids).size() != ids.size()) {
            throw new IllegalArgumentException("question " + id + " names an option twice: " + ids);
        }
    }
}
