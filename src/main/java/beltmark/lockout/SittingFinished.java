package beltmark.lockout;

import beltmark.core.lockout.QuizResult;
import java.util.List;

/**
 * Body of the record {@code lockout.result}.
 *
 * @param sitting the number of the record that opened the sitting
 * @param quiz the id of the quiz
 * @param version its version
 * @param right how many questions are right
 * @param asked how many there are
 * @param needed how many right answers pass
 * @param passPercent the pass mark it follows from, site policy
 * @param criticalMisses the ids of the critical questions missed
 * @param passed whether the quiz is passed
 */
record SittingFinished(
        long sitting,
        String quiz,
        int version,
        int right,
        int asked,
        int needed,
        int passPercent,
        List<String> criticalMisses,
        boolean passed) {

    SittingFinished {
        criticalMisses = List.copyOf(criticalMisses);
    }

    static SittingFinished of(Sitting sitting, QuizResult result) {
        return new SittingFinished(
                sitting.id(),
                sitting.quiz().id(),
                sitting.quiz().version(),
                result.right(),
                result.asked(),
                result.needed(),
                sitting.quiz().passPercent(),
                result.criticalMisses(),
                result.passed());
    }
}
