package beltmark.recordbook;

import beltmark.db.Schema;
import java.util.List;
import java.util.Optional;

/**
 * What a walk through the whole book found.
 *
 * @param head the end of the part that is as it was written; its sequence is the count of good records
 * @param fault the first record that is not, if any
 * @param schemaDifferences tables, indexes and triggers that are not as the migrations made them
 */
public record Verification(Head head, Optional<Fault> fault, List<Schema.Difference> schemaDifferences) {

    /**
     * The first record at which the book is no longer as it was written.
     *
     * @param sequence the number found there
     * @param reason what does not fit
     */
    public record Fault(long sequence, Reason reason) {}

    /** What can be wrong with a record. */
    public enum Reason {
        /** A number is left out: records were removed. */
        GAP,
        /** It is in a format that this program does not know. */
        UNKNOWN_FORMAT,
        /** It is not linked to the record before it: one of the two was replaced or moved. */
        WRONG_LINK,
        /** What it says does not give its hash: it was changed. */
        WRONG_HASH,
        /** It was stored before the record in front of it. */
        OUT_OF_TIME,
        /** Its columns do not hold what they must. */
        UNREADABLE
    }

    public Verification {
        schemaDifferences = List.copyOf(schemaDifferences);
    }

    /** {@return whether nothing was found} */
    public boolean isUnchanged() {
        return fault.isEmpty() && schemaDifferences.isEmpty();
    }
}
