package beltmark.review;

import java.util.List;

/**
 * A finished sitting with the records behind it.
 *
 * @param result what came of it
 * @param answers its answers in the order they were given
 * @param all the latest finished sittings of the same person, the last one first
 */
record SittingRecords(FinishedSitting result, List<Kept> answers, List<FinishedSitting> all) {

    /**
     * An answer as it is kept.
     *
     * @param record the number of its record
     * @param answer its body
     */
    record Kept(long record, RecordedAnswer answer) {}
}
