package beltmark.lockout;

import beltmark.core.lockout.Question;
import beltmark.core.lockout.Quiz;
import java.util.List;

/**
 * Body of the record {@code lockout.sitting}.
 *
 * @param quiz the id of the quiz
 * @param version its version
 * @param seed what the order of questions and options follows from
 * @param questions the ids of the questions it asks
 */
record SittingOpened(String quiz, int version, long seed, List<String> questions) {

    SittingOpened {
        questions = List.copyOf(questions);
    }

    static SittingOpened of(Quiz quiz, long seed) {
        return new SittingOpened(
                quiz.id(),
                quiz.version(),
                seed,
                quiz.questions().stream().map(Question::id).toList());
    }
}
