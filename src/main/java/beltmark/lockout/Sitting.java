package beltmark.lockout;

import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.Quiz;
import beltmark.core.lockout.SittingOrder;
import beltmark.web.NotFound;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One person's way through the quiz, as far as it has come.
 *
 * @param id the number of the record that opened it
 * @param quiz the quiz in the version that is sat
 * @param order the order in which questions and options are shown
 * @param answers the answers given so far, by question
 */
public record Sitting(long id, Quiz quiz, SittingOrder order, Map<String, GivenAnswer> answers) {

    public Sitting {
        answers = Map.copyOf(answers);
    }

    static Sitting of(SittingRow row, Quiz quiz, Collection<GivenAnswer> given) {
        Map<String, GivenAnswer> answers = new HashMap<>();
        given.forEach(answer -> answers.put(answer.question(), answer));
        return new Sitting(row.id(), quiz, SittingOrder.of(quiz, row.seed()), answers);
    }

    /** {@return how many questions there are} */
    public int size() {
        return order.questions().size();
    }

    /** {@return the question of a number from 1, as this sitting counts them} */
    public Question question(long number) {
        if (number < 1 || number > size()) {
            throw new NotFound("question " + number + " of sitting " + id);
        }
        return quiz.question(order.questions().get((int) number - 1));
    }

    Optional<GivenAnswer> findAnswer(Question question) {
        return Optional.ofNullable(answers.get(question.id()));
    }

    /** {@return the number of the first question without an answer; empty when all have one} */
    OptionalInt next() {
        for (int number = 1; number <= size(); number++) {
            if (findAnswer(question(number)).isEmpty()) {
                return OptionalInt.of(number);
            }
        }
        return OptionalInt.empty();
    }

    boolean isFinished() {
        return answers.size() == size();
    }

    Sitting with(GivenAnswer answer) {
        Map<String, GivenAnswer> more = new HashMap<>(answers);
        more.put(answer.question(), answer);
        return new Sitting(id, quiz, order, more);
    }

    Map<String, Judgement> judgements() {
        Map<String, Judgement> judgements = new LinkedHashMap<>();
        answers.forEach((question, answer) -> judgements.put(question, answer.judgement()));
        return judgements;
    }
}
