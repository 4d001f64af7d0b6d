package beltmark.core.problem;

import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * The numbers of a problem, drawn one after the other from a seed. The same seed gives the same numbers on every
 * machine: only {@code nextLong} of the generator is used, and practice draws from the JDK's SplittableRandom (Steele,
 * Lea and Flood 2014), whose sequence a test holds fast.
 */
public final class Draw {

    /** An odd number with its bits well spread, so that no two families' seeds lie side by side. */
    private static final long FAMILIES_APART = 0x9E3779B97F4A7C15L;

    private final RandomGenerator random;

    private Draw(RandomGenerator random) {
        this.random = random;
    }

    /**
     * {@return the draw of a practice code in a family; the same code draws something else in another family, so that a
     * drill does not give the bench away}
     */
    public static Draw of(String family, ProblemCode code) {
        // the hash of a text is laid down by the language, so it is the same everywhere
        return new Draw(new SplittableRandom(code.number() + FAMILIES_APART * family.hashCode()));
    }

    /** {@return the draw of any source of numbers, such as the keyed one of a paper} */
    public static Draw of(RandomGenerator random) {
        return new Draw(random);
    }

    /** {@return a whole number from 0 up to, not including, the bound} */
    public int below(int bound) {
        // the remainder's bias is below 2^-31 for the small bounds used here, and the result does not hang on a JDK
        // default
        return (int) Long.remainderUnsigned(random.nextLong(), bound);
    }

    /** {@return a length of the range, each of its steps equally likely} */
    public Length length(LengthRange range) {
        return range.at(below(range.steps()));
    }

    /** {@return a number of the range, each of its steps equally likely} */
    public double number(NumberRange range) {
        return range.at(below(range.steps()));
    }

    /** {@return the list in an order of chance, each order equally likely (Fisher and Yates)} */
    public <T> List<T> shuffled(List<T> list) {
        List<T> mixed = new ArrayList<>(list);
        for (int i = mixed.size() - 1; i > 0; i--) {
            Collections.swap(mixed, i, below(i + 1));
        }
        return mixed;
    }

    /** {@return one of the list, each equally likely} */
    public <T> T oneOf(List<T> list) {
        return list.get(below(list.size()));
    }

    /** {@return one of the list, each as likely as its weight, of which at least one is above 0} */
    public <T> T oneOf(List<T> list, List<Integer> weights) {
        int at = below(weights.stream().mapToInt(Integer::intValue).sum());
        int i = 0;
        while (at >= weights.get(i)) {
            at -= weights.get(i);
            i++;
        }
        return list.get(i);
    }
}
