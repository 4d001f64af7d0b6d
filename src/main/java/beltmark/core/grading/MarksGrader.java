package beltmark.core.grading;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Blank.WrongAnswer;
import beltmark.core.problem.MatchBlank;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.SeveralBlank;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Judges what is picked, put in order or matched. There is no partial credit: a blank is right or it is not. */
final class MarksGrader {

    private MarksGrader() {}

    static Grade grade(SeveralBlank blank, Marks marks) {
        if (marks.isEmpty()) {
            return Grade.unreadable(Unreadable.BLANK);
        }
        Set<String> picked = new HashSet<>(marks.options());
        return blank.options().containsAll(picked) && !marks.hasMarks()
                ? compare(blank, new Answer.OfSeveral(picked))
                : Grade.unreadable(Unreadable.NOT_AN_OPTION);
    }

    static Grade grade(OrderBlank blank, Marks marks) {
        if (marks.isEmpty()) {
            return Grade.unreadable(Unreadable.BLANK);
        }
        if (!blank.items().containsAll(marks.options())) {
            return Grade.unreadable(Unreadable.NOT_AN_OPTION);
        }
        return marks.hasMarks() ? gradePlaces(blank, marks) : gradeSequence(blank, marks.options());
    }

    private static Grade gradeSequence(OrderBlank blank, List<String> items) {
        if (new HashSet<>(items).size() < items.size()) {
            return Grade.unreadable(Unreadable.PLACE_TWICE);
        }
        return items.size() < blank.items().size()
                ? Grade.unreadable(Unreadable.PLACE_MISSING)
                : compare(blank, new Answer.OfOrder(items));
    }

    private static Grade gradePlaces(OrderBlank blank, Marks marks) {
        String[] places = new String[blank.items().size()];
        for (Marks.Pair pair : marks.pairs()) {
            if (pair.mark().isEmpty()) {
                return Grade.unreadable(Unreadable.PLACE_MISSING);
            }
            if (!pair.mark().matches("[1-9][0-9]?") || Integer.parseInt(pair.mark()) > places.length) {
                return Grade.unreadable(Unreadable.NOT_AN_OPTION);
            }
            int place = Integer.parseInt(pair.mark()) - 1;
            if (places[place] != null) {
                return Grade.unreadable(Unreadable.PLACE_TWICE);
            }
            places[place] = pair.option();
        }
        return Arrays.asList(places).contains(null)
                ? Grade.unreadable(Unreadable.PLACE_MISSING)
                : gradeSequence(blank, List.of(places));
    }

    static Grade grade(MatchBlank blank, Marks marks) {
        if (marks.isEmpty()) {
            return Grade.unreadable(Unreadable.BLANK);
        }
        Map<String, String> partners = new HashMap<>();
        for (Marks.Pair pair : marks.pairs()) {
            if (pair.mark().isEmpty()) {
                return Grade.unreadable(Unreadable.PLACE_MISSING);
            }
            if (!blank.things().contains(pair.option()) || !blank.partners().contains(pair.mark())) {
                return Grade.unreadable(Unreadable.NOT_AN_OPTION);
            }
            if (partners.put(pair.option(), pair.mark()) != null) {
                return Grade.unreadable(Unreadable.PLACE_TWICE);
            }
        }
        return partners.size() < blank.things().size()
                ? Grade.unreadable(Unreadable.PLACE_MISSING)
                : compare(blank, new Answer.OfMatch(partners));
    }

    private static Grade compare(Blank blank, Answer answer) {
        if (answer.equals(blank.right())) {
            return Grade.of(Verdict.RIGHT, answer);
        }
        return blank.wrongAnswers().stream()
                .filter(wrong -> wrong.answer().equals(answer))
                .map(WrongAnswer::slip)
                .findFirst()
                .map(slip -> Grade.slip(slip, answer))
                .orElseGet(() -> Grade.of(Verdict.WRONG, answer));
    }
}
