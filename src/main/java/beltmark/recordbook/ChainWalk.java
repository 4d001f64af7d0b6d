package beltmark.recordbook;

import beltmark.recordbook.Verification.Fault;
import beltmark.recordbook.Verification.Reason;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Follows the records from the first on, each against the one before it, up to the first that does not fit. */
final class ChainWalk {

    private Head head = Head.OF_EMPTY_BOOK;
    private @Nullable Fault fault;

    /** Looks at the next record; returns whether it fits. */
    boolean accepts(StoredEntry entry) {
        Optional<Reason> reason = reasonAgainst(entry.envelope(), entry.hash());
        if (reason.isPresent()) {
            refuse(entry.sequence(), reason.get());
            return false;
        }
        head = entry.toHead();
        return true;
    }

    /** Notes that the record after the last good one cannot even be read. */
    void refuseNext() {
        refuse(head.sequence() + 1, Reason.UNREADABLE);
    }

    private void refuse(long sequence, Reason reason) {
        fault = new Fault(sequence, reason);
    }

    private Optional<Reason> reasonAgainst(Envelope envelope, Hash hash) {
        if (envelope.sequence() != head.sequence() + 1) {
            return Optional.of(Reason.GAP);
        }
        if (envelope.format() != Envelope.FORMAT) {
            return Optional.of(Reason.UNKNOWN_FORMAT);
        }
        if (!envelope.previousHash().equals(head.hash())) {
            return Optional.of(Reason.WRONG_LINK);
        }
        if (!envelope.hash().equals(hash)) {
            return Optional.of(Reason.WRONG_HASH);
        }
        return envelope.recordedAt().isBefore(head.recordedAt()) ? Optional.of(Reason.OUT_OF_TIME) : Optional.empty();
    }

    Head head() {
        return head;
    }

    Optional<Fault> fault() {
        return Optional.ofNullable(fault);
    }
}
