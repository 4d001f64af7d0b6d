package beltmark.core.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Marks on the options of one blank, as they are typed or sent: {@code a b c}, or each with its place or partner,
 * {@code a:2 b:1 c:3}, with blanks or commas between.
 *
 * @param pairs in the order given
 */
record Marks(List<Pair> pairs) {

    private static final int LONGEST = 2_000;
    private static final Pattern BETWEEN = Pattern.compile("[\\s,]+");

    /**
     * One mark.
     *
     * @param option the option's id
     * @param mark its place or partner; empty when none was given
     */
    record Pair(String option, String mark) {}

    /** {@return the marks of a text; a text that is too long has none} */
    static Marks read(@Nullable String typed) {
        List<Pair> pairs = new ArrayList<>();
        if (typed != null && typed.length() <= LONGEST) {
            for (String token : BETWEEN.split(typed.strip(), -1)) {
                int colon = token.indexOf(':');
                if (!token.isEmpty()) {
                    pairs.add(
                            colon < 0
                                    ? new Pair(token, "")
                                    : new Pair(token.substring(0, colon), token.substring(colon + 1)));
                }
            }
        }
        return new Marks(List.copyOf(pairs));
    }

    List<String> options() {
        return pairs.stream().map(Pair::option).toList();
    }

    boolean isEmpty() {
        return pairs.isEmpty();
    }

    boolean hasMarks() {
        return pairs.stream().anyMatch(pair -> !pair.mark.isEmpty());
    }
}
