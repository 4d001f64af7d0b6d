package beltmark.review.first;

import beltmark.core.statistics.Bounds;
import beltmark.core.statistics.Interval;
import beltmark.core.statistics.ItemFlag;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Proportion;
import beltmark.review.first.FirstAttempts.MissCount;
import java.util.Optional;
import java.util.Set;

/**
 * How a question did.
 *
 * @param question the id of the question
 * @param right how many had it right of how many asked
 * @param told whether more than that count may be told
 * @param mostMissed the most frequent way to miss it
 * @param people how many the correlation is over: those with a paper of the usual length
 * @param correctedR the correlation with the score on the other questions
 * @param flags why it should be looked at
 */
public record QuestionFindings(
        String question,
        Proportion right,
        boolean told,
        Optional<MissCount> mostMissed,
        long people,
        Measure correctedR,
        Set<ItemFlag> flags) {

    /** Keeps its own set. */
    public QuestionFindings {
        flags = Set.copyOf(flags);
    }

    /** {@return the 95 % interval of the share, if it may be told} */
    public Optional<Interval> interval() {
        return told ? right.wilson95() : Optional.empty();
    }

    /** {@return whether the correlation means anything and may be told} */
    public boolean hasCorrelation() {
        return told && people >= ItemFlag.SMALLEST_FOR_CORRELATION;
    }

    /** {@return the 95 % interval of the correlation, if it may be told} */
    public Optional<Bounds> correlationInterval() {
        Double r = correctedR.value();
        return hasCorrelation() && r != null ? Optional.of(Bounds.ofCorrelation(r, people)) : Optional.empty();
    }
}
