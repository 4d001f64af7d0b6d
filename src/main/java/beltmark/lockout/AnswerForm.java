package beltmark.lockout;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.web.Form;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An answer as the form sends it: positions on the page, never ids.
 *
 * @param chosen the positions chosen, as sent
 * @param places the place given to each position of an order, as sent; blank ones are left out
 */
record AnswerForm(Set<String> chosen, Map<Integer, String> places) {

    /** Name of the fields of options to be chosen. */
    static final String CHOICE = "choice";

    /** Name of the fields of places, before the position. */
    static final String PLACE = "place-";

    /** An id that no option has: what was sent is not on the page. */
    private static final String NOT_ON_THE_PAGE = "";

    static final AnswerForm EMPTY = new AnswerForm(Set.of(), Map.of());

    AnswerForm {
        chosen = Set.copyOf(chosen);
        places = Map.copyOf(places);
    }

    static AnswerForm read(Form form, int options) {
        Map<Integer, String> places = new HashMap<>();
        for (int position = 1; position <= options; position++) {
            String place = form.text(PLACE + position);
            if (!place.isEmpty()) {
                places.put(position, place);
            }
        }
        return new AnswerForm(new HashSet<>(form.all(CHOICE)), places);
    }

    /** {@return the answer, with what is not on the page kept as such} */
    Answer toAnswer(Question question, List<String> shown) {
        return question.kind() == QuestionKind.PUT_IN_ORDER ? order(shown) : choice(shown);
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
