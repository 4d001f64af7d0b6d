package beltmark.review;

import java.time.Instant;
import java.util.List;

/**
 * A finished sitting with its result.
 *
 * @param record the number of the record of the result
 * @param sitting the number of the record that opened it
 * @param paper the id of the paper
 * @param personId who sat it
 * @param person that person's name
 * @param crew the crew of that person now
 * @param version the version of the quiz
 * @param right how many questions were right
 * @param asked how many there were
 * @param needed how many were needed
 * @param passed whether it was passed
 * @param criticalMisses the ids of the critical questions missed
 * @param finishedAt when it was finished
 */
record FinishedSitting(
        long record,
        long sitting,
        String paper,
        long personId,
        String person,
        String crew,
        int version,
        int right,
        int asked,
        int needed,
        boolean passed,
        List<String> criticalMisses,
        Instant finishedAt) {

    FinishedSitting {
        criticalMisses = List.copyOf(criticalMisses);
    }
}
