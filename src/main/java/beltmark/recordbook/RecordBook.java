package beltmark.recordbook;

import beltmark.db.Schema;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The book itself: appends and reads, and never changes what is in it. */
public final class RecordBook {

    private final Clock clock;
    private final EntryStore store = new EntryStore();

    public RecordBook(Clock clock) {
        this.clock = clock;
    }

    /**
     * Appends an entry, within a change of the database. When the answer is new, the feature adds its own row under the
     * same number in the same change.
     *
     * @return the number; the earlier one, and nothing written, when the operation had been recorded already
     * @throws OperationTaken when the operation id belongs to another kind, subject or actor
     */
    public Recorded append(Handle handle, Entry entry) {
        Optional<StoredEntry> earlier = store.findByOperation(handle, entry.operation());
        if (earlier.isPresent()) {
            return recordedBefore(entry, earlier.get());
        }
        Head head = store.getHead(handle);
        Envelope envelope = follow(head, entry);
        store.add(handle, envelope);
        return new Recorded(envelope.sequence(), true);
    }

    private static Recorded recordedBefore(Entry entry, StoredEntry earlier) {
        if (!earlier.belongsTo(entry)) {
            throw new OperationTaken(entry, earlier.sequence());
        }
        return new Recorded(earlier.sequence(), false);
    }

    private Envelope follow(Head head, Entry entry) {
        // a clock that was set back must not put this record before an earlier one
        long recordedAt = Math.max(clock.millis(), head.recordedAt().toEpochMilli());
        return new Envelope(
                Envelope.FORMAT,
                head.sequence() + 1,
                entry.kind(),
                entry.operation(),
                entry.subject(),
                entry.actor(),
                entry.happenedAt(),
                Instant.ofEpochMilli(recordedAt),
                Json.write(entry.body()),
                head.hash());
    }

    /** {@return whether a record came by that operation} */
    public boolean isRecorded(Handle handle, String operation) {
        return store.findByOperation(handle, operation).isPresent();
    }

    /** {@return the record of that number, if there is one} */
    public Optional<StoredEntry> find(Handle handle, long sequence) {
        return store.find(handle, sequence);
    }

    /** {@return the end of the book} */
    public Head head(Handle handle) {
        return store.getHead(handle);
    }

    /**
     * Walks the whole book, about a second for each 200,000 records. It cannot see records missing at the end, nor a book
     * that was rewritten from some record on with all its hashes: those take a head noted down earlier.
     */
    public Verification verify(Handle handle) {
        ChainWalk walk = new ChainWalk();
        store.walk(handle, walk);
        return new Verification(walk.head(), walk.fault(), Schema.differences(handle));
    }

    /**
     * Compares the book with a head that was noted down earlier.
     *
     * @param word number and hash, as from {@link Head#toWord()}
     * @return whether the book still has that record; if so and it verifies, nothing up to there was changed or removed
     */
    public boolean extendsHead(Handle handle, String word) {
        return word.equals(Head.OF_EMPTY_BOOK.toWord())
                || parseSequence(word)
                        .flatMap(sequence -> store.find(handle, sequence))
                        .filter(entry -> word.equals(entry.toHead().toWord()))
                        .isPresent();
    }

    private static Optional<Long> parseSequence(String word) {
        return word.matches("[1-9][0-9]{0,17}:.*")
                ? Optional.of(Long.parseLong(word.substring(0, word.indexOf(':'))))
                : Optional.empty();
    }
}
