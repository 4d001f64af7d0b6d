package beltmark.core.problem;

import beltmark.core.units.Length;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a person answered to the earlier blanks of a problem, right or wrong, by the blank's path
 * ({@code part.blank}); later parts may be right from these own figures.
 *
 * @param answers the last readable answer to each blank
 */
public record OwnFigures(Map<String, Answer> answers) {

    /** Nothing answered yet. */
    public static final OwnFigures NONE = new OwnFigures(Map.of());

    public OwnFigures {
        answers = Map.copyOf(answers);
    }

    /** {@return these figures and one more, which replaces an earlier one to the same blank} */
    public OwnFigures with(String path, Answer answer) {
        Map<String, Answer> more = new LinkedHashMap<>(answers);
        more.put(path, answer);
        return new OwnFigures(more);
    }

    /** {@return the own length at a path, or the right one where there is none} */
    public Length length(String path, Length right) {
        return answers.get(path) instanceof Answer.OfLength own ? own.length() : right;
    }

    /** {@return the own number at a path, or the right one where there is none} */
    public double number(String path, double right) {
        return answers.get(path) instanceof Answer.OfNumber own ? own.amount() : right;
    }

    /** {@return the own choice at a path, or the right one where there is none} */
    public String choice(String path, String right) {
        return answers.get(path) instanceof Answer.OfChoice own ? own.option() : right;
    }
}
