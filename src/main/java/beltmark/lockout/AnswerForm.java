package beltmark.lockout;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Match;
import beltmark.core.lockout.Question;
import beltmark.web.Form;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * An answer as the form sends it: positions on the page, never ids.
 *
 * @param chosen the positions chosen, as sent
 * @param places the place given to each position of an order, as sent; blank ones are left out
 * @param matched the position of the target given to each row and column of a match, as sent; blank ones are left out
 */
record AnswerForm(Set<String> chosen, Map<Integer, String> places, Map<String, String> matched) {

    /** Name of the fields of options to be chosen. */
    static final String CHOICE = "choice";

    /** Name of the fields of places, before the position. */
    static final String PLACE = "place-";

    /** Name of the fields of a match, before row and column. */
    static final String MATCH = "match-";

    /** An id that no option has: what was sent is not on the page. */
    private static final String NOT_ON_THE_PAGE = "";

    static final AnswerForm EMPTY = new AnswerForm(Set.of(), Map.of(), Map.of());

    AnswerForm {
        chosen = Set.copyOf(chosen);
        places = Map.copyOf(places);
        matched = Map.copyOf(matched);
    }

    static AnswerForm read(Form form, Question question) {
        Map<Integer, String> places = new HashMap<>();
        Map<String, String> matched = new HashMap<>();
        Match match = question.match();
        if (match == null) {
            for (int position = 1; position <= question.options().size(); position++) {
                keep(form, PLACE + position, position, places);
            }
        } else {
            for (String cell : cells(match)) {
                keep(form, MATCH + cell, cell, matched);
            }
        }
        return new AnswerForm(new HashSet<>(form.all(CHOICE)), places, matched);
    }

    private static <T> void keep(Form form, String field, T key, Map<T, String> kept) {
        if (!form.text(field).isEmpty()) {
            kept.put(key, form.text(field));
        }
    }

    private static List<String> cells(Match match) {
        return IntStream.rangeClosed(1, match.rows().size())
                .boxed()
                .flatMap(row -> IntStream.rangeClosed(1, match.columns().size()).mapToObj(column -> cell(row, column)))
                .toList();
    }

    /** {@return row and column of a match as its fields name them} */
    static String cell(int row, int column) {
        return row + "-" + column;
    }

    /** {@return the answer, with what is not on the page kept as such} */
    Answer toAnswer(Question question, List<String> shown) {
        return switch (question.kind()) {
            case PUT_IN_ORDER -> order(shown);
            case MATCH -> match(question.getMatch().inOrderOf(shown));
            case CHOICE, SEVERAL_OF, SPOTS -> choice(shown);
        };
    }

    private Answer match(Match shown) {
        Set<String> pairs = new HashSet<>();
        for (int row = 1; row <= shown.rows().size(); row++) {
            for (int column = 1; column <= shown.columns().size(); column++) {
                String position = matched.get(cell(row, column));
                if (position != null) {
                    List<String> targets = shown.columns().get(column - 1);
                    int at = whole(position);
                    pairs.add(
                            at < 1 || at > targets.size()
                                    ? NOT_ON_THE_PAGE
                                    : Match.pair(shown.rows().get(row - 1), targets.get(at - 1)));
                }
            }
        }
        return Answer.ofChosen(pairs);
    }

    private Answer choice(List<String> shown) {
        Set<String> ids = new HashSet<>();
        for (String position : chosen) {
            int at = whole(position);
            ids.add(at < 1 || at > shown.size() ? NOT_ON_THE_PAGE : shown.get(at - 1));
        }
        return Answer.ofChosen(ids);
    }

    private Answer order(List<String> shown) {
        Map<String, Integer> byId = new HashMap<>();
        places.forEach((position, place) -> byId.put(shown.get(position - 1), whole(place)));
        return new Answer(byId);
    }

    private static int whole(String text) {
        return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : 0;
    }
}
