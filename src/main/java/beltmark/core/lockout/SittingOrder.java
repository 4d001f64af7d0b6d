package beltmark.core.lockout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The order in which one sitting shows the questions, and the options of each. It follows from the seed, the ids and the
 * number of options alone, never from the key, so that no order gives an answer away.
 *
 * @param questions the ids of all questions in the order shown
 * @param options the ids of the options of each question in the order shown
 */
public record SittingOrder(List<String> questions, Map<String, List<String>> options) {

    /** Keeps both orders as they are. */
    public SittingOrder {
        questions = List.copyOf(questions);
        options = Map.copyOf(options);
    }

    /**
     * Shuffles a quiz. {@link Random} is used because its numbers are part of its specification: the same seed gives
     * the same order on every Java. Its first numbers for neighbouring seeds are alike, so the seed is mixed first.
     *
     * @param quiz the quiz
     * @param seed any number
     * @return always the same order for the same quiz and seed
     */
    public static SittingOrder of(Quiz quiz, long seed) {
        Random random = random(seed);
        Map<String, List<String>> options = new LinkedHashMap<>();
        for (Question question : quiz.questions()) {
            options.put(question.id(), shuffled(question.options(), random));
        }
        return new SittingOrder(shuffled(List.copyOf(options.keySet()), random), options);
    }

    /** {@return the options of that question in the order shown} */
    public List<String> optionsOf(String question) {
        List<String> shown = options.get(question);
        if (shown == null) {
            throw new IllegalArgumentException("the sitting has no question " + question);
        }
        return shown;
    }

    /** {@return numbers that follow from a seed, also from one that is next to another} */
    static Random random(long seed) {
        return new Random(mixed(seed));
    }

    /** The finishing mix of SplitMix64 (Steele, Lea and Flood 2014, OOPSLA; constants from memory). */
    private static long mixed(long seed) {
        long mixed = (seed ^ (seed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    static <T> List<T> shuffled(List<T> ids, Random random) {
        List<T> shuffled = new ArrayList<>(ids);
        Collections.shuffle(shuffled, random);
        return List.copyOf(shuffled);
    }
}
