package beltmark.lockout;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import java.util.List;

/**
 * Body of the record {@code lockout.answer}: what was shown, what was answered and what it was judged by, so that it can
 * be judged again when the quiz has long changed.
 *
 * @param sitting the number of the record that opened the sitting
 * @param quiz the id of the quiz
 * @param version its version
 * @param question the id of the question
 * @param number its number in the sitting
 * @param kind what was asked to be done with the options
 * @param critical whether missing it fails the quiz
 * @param language the language it was shown in
 * @param ask the question as shown
 * @param options the options as shown, in the order shown
 * @param chosen the options chosen, or all in the order given
 * @param right the key
 * @param judgement right or wrong
 * @param source the paragraph
 */
record AnswerGiven(
        long sitting,
        String quiz,
        int version,
        String question,
        int number,
        String kind,
        boolean critical,
        String language,
        String ask,
        List<ShownOption> options,
        List<String> chosen,
        List<String> right,
        String judgement,
        String source) {

    AnswerGiven {
        options = List.copyOf(options);
        chosen = List.copyOf(chosen);
        right = List.copyOf(right);
    }

    static AnswerGiven of(Sitting sitting, int number, Answer answer, Judgement judgement, Wording wording) {
        Question question = sitting.question(number);
        List<ShownOption> options = sitting.order().optionsOf(question.id()).stream()
                .map(option -> new ShownOption(option, wording.option(question, option)))
                .toList();
        return new AnswerGiven(
                sitting.id(),
                sitting.quiz().id(),
                sitting.quiz().version(),
                question.id(),
                number,
                question.kind().id(),
                question.critical(),
                wording.words().language().tag(),
                wording.ask(question),
                options,
                answer.inOrder(),
                question.right(),
                judgement.id(),
                question.source().paragraph());
    }

    /** {@return the answer that stands from now on} */
    GivenAnswer given(String operation) {
        return new GivenAnswer(
                question,
                chosen,
                judgement.equals(Judgement.RIGHT.id()) ? Judgement.RIGHT : Judgement.WRONG,
                operation);
    }

    /**
     * An option as it was shown.
     *
     * @param id its id
     * @param text its text
     */
    record ShownOption(String id, String text) {}
}
