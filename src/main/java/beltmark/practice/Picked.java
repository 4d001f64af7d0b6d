package beltmark.practice;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.SeveralBlank;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes what was picked as one text, the way the grader reads it, and reads it back. */
final class Picked {

    private static final Pattern BETWEEN = Pattern.compile(" ");

    private Picked() {}

    /** {@return the picked ids with blanks between; null for a length or a number} */
    static @Nullable String of(Answer answer) {
        if (answer instanceof Answer.OfChoice choice) {
            return choice.option();
        }
        if (answer instanceof Answer.OfSeveral several) {
            return String.join(" ", new TreeSet<>(several.options()));
        }
        if (answer instanceof Answer.OfOrder order) {
            return String.join(" ", order.items());
        }
        return answer instanceof Answer.OfMatch match
                ? match.partners().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(pair -> pair.getKey() + ":" + pair.getValue())
                        .collect(Collectors.joining(" "))
                : null;
    }

    /** {@return the answer to a blank that {@link #of} wrote} */
    static Answer read(Blank asked, String text) {
        List<String> ids = List.of(BETWEEN.split(text, -1));
        if (asked instanceof ChoiceBlank) {
            return new Answer.OfChoice(text);
        }
        if (asked instanceof SeveralBlank) {
            return new Answer.OfSeveral(Set.copyOf(ids));
        }
        return asked instanceof OrderBlank
                ? new Answer.OfOrder(ids)
                : new Answer.OfMatch(ids.stream()
                        .collect(Collectors.toMap(
                                Picked::thing,
                                pair -> pair.substring(thing(pair).length() + 1))));
    }

    private static String thing(String pair) {
        return pair.substring(0, pair.indexOf(':'));
    }
}
