package beltmark.core.lockout;

import java.util.HashSet;
import java.util.List;

/**
 * One question with its key. Options are known by ids that say nothing about the key.
 *
 * @param id the name of the question, unique in its quiz
 * @param kind what is asked
 * @param critical whether missing it fails the quiz whatever the score
 * @param options the ids of all options, at least 2 (3 to put in order), each once
 * @param right one option of a choice; the right options of several-of, at least 1; all items in the right order
 * @param source where it comes from
 */
public record Question(
        String id, QuestionKind kind, boolean critical, List<String> options, List<String> right, Source source) {

    /** The fewest items that can be put in order. */
    public static final int FEWEST_IN_ORDER = 3;

    private static final int FEWEST_OPTIONS = 2;

    /** Refuses a key that does not fit the options or the kind. */
    public Question {
        options = List.copyOf(options);
        right = List.copyOf(right);
        requireDistinct(id, options);
        requireDistinct(id, right);
        if (options.size() < fewest(kind) || !options.containsAll(right) || !fits(kind, options.size(), right.size())) {
            throw new IllegalArgumentException(
                    "question " + id + ": key " + right + " does not fit " + kind + " of " + options);
        }
    }

    /** {@return the fewest options of a question of that kind} */
    public static int fewest(QuestionKind kind) {
        return kind == QuestionKind.PUT_IN_ORDER ? FEWEST_IN_ORDER : FEWEST_OPTIONS;
    }

    /** {@return whether a key of that many options fits a question of that kind} */
    public static boolean fits(QuestionKind kind, int options, int right) {
        return switch (kind) {
            case CHOICE -> right == 1;
            case SEVERAL_OF -> right >= 1;
            case PUT_IN_ORDER -> right == options;
        };
    }

    private static void requireDistinct(String id, List<String> ids) {
        if (new HashSet<>(ids).size() != ids.size()) {
            throw new IllegalArgumentException("question " + id + " names an option twice: " + ids);
        }
    }
}
