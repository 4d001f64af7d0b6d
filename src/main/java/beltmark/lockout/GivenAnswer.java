package beltmark.lockout;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import java.util.List;

/**
 * The answer that stands for a question of a sitting.
 *
 * @param question the id of the question
 * @param chosen the options chosen, or all in the order given
 * @param judgement right or wrong
 * @param operation the form it came by
 */
record GivenAnswer(String question, List<String> chosen, Judgement judgement, String operation) {

    GivenAnswer {
        chosen = List.copyOf(chosen);
    }

    /** {@return the answer as the core judges it} */
    Answer to(Question asked) {
        return asked.kind() == QuestionKind.PUT_IN_ORDER ? Answer.ofOrder(chosen) : Answer.ofChosen(chosen);
    }
}
