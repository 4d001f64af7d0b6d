package beltmark.review.first;

import beltmark.analysis.Feldt;
import beltmark.core.statistics.Bounds;
import beltmark.core.statistics.DecisionConsistency;
import beltmark.core.statistics.ItemFlag;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Reliability;
import beltmark.core.statistics.Scores;
import java.util.Optional;

/**
 * How a quiz did as a measurement, over papers of the usual length. Where every paper has the same questions the
 * consistency is KR-20 (alpha) with the interval of Feldt; where questions are drawn it is KR-21, which needs the scores
 * only: papers that are drawn alike differ by chance.
 *
 * @param needed how many right answers pass such a paper, critical questions aside
 * @param scores the scores on papers of that length
 * @param sameQuestions whether every paper had the same questions
 * @param consistency KR-20 or KR-21
 */
public record TestFindings(int needed, Scores scores, boolean sameQuestions, Measure consistency) {

    /** {@return whether there are enough people for a consistency to mean anything} */
    public boolean isLargeEnough() {
        return scores.people() >= ItemFlag.SMALLEST_FOR_CORRELATION;
    }

    /** {@return the 95 % interval of KR-20} */
    public Optional<Bounds> interval() {
        Double value = consistency.value();
        return sameQuestions && value != null
                ? Feldt.interval95(value, scores.people(), scores.items())
                : Optional.empty();
    }

    /** {@return the standard error of a score, in questions} */
    public Measure standardError() {
        return Reliability.standardError(scores, consistency);
    }

    /** {@return how the same people would fare on a second paper like it} */
    public DecisionConsistency twice() {
        return DecisionConsistency.of(scores, needed);
    }
}
