package beltmark.texts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds words of the trade in sentences: whole words in large or small letters, and of two that begin at the same place the
 * longer, so that "take-up weight" is no "take-up".
 */
final class TermFinder {

    private static final Pattern NOTHING = Pattern.compile("(?!)");

    private final Map<String, String> idByForm = new TreeMap<>();
    private final Pattern forms;

    /** @param idByForm the id of the term that each form belongs to */
    TermFinder(Map<String, String> idByForm) {
        idByForm.forEach((form, id) -> this.idByForm.put(small(form), id));
        String longestFirst = this.idByForm.keySet().stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        forms = longestFirst.isEmpty()
                ? NOTHING
                : Pattern.compile("(?<![\\p{L}\\p{N}])(?:" + longestFirst + ")(?![\\p{L}\\p{N}])");
    }

    /** {@return the ids of the terms that occur, in the order in which they do, each once} */
    List<String> find(Collection<String> sentences) {
        LinkedHashSet<String> found = new LinkedHashSet<>();
        for (String sentence : sentences) {
            Matcher matcher = forms.matcher(small(sentence));
            while (matcher.find()) {
                found.add(idByForm.getOrDefault(matcher.group(), ""));
            }
        }
        return new ArrayList<>(found);
    }

    private static String small(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
