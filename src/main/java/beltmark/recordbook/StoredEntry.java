package beltmark.recordbook;

import java.time.Instant;

/** A record as it stands in the book, for pages that show evidence. */
public final class StoredEntry {

    private final Envelope envelope;
    private final Hash hash;

    StoredEntry(Envelope envelope, Hash hash) {
        this.envelope = envelope;
        this.hash = hash;
    }

    Envelope envelope() {
        return envelope;
    }

    /** {@return its number, from 1} */
    public long sequence() {
        return envelope.sequence();
    }

    /** {@return what it is: feature and noun} */
    public String kind() {
        return envelope.kind();
    }

    /** {@return the id of the form or request it came by} */
    public String operation() {
        return envelope.operation();
    }

    /** {@return the person it is about} */
    public long subject() {
        return envelope.subject();
    }

    /** {@return the person who did it} */
    public long actor() {
        return envelope.actor();
    }

    /** {@return when it is said to have happened} */
    public Instant happenedAt() {
        return envelope.happenedAt();
    }

    /** {@return when it was stored} */
    public Instant recordedAt() {
        return envelope.recordedAt();
    }

    /** {@return the body as JSON, exactly as stored} */
    public String body() {
        return envelope.body();
    }

    /** {@return the body as the Java record it was appended as; components that came later are null or nought} */
    public <T extends Record> T bodyAs(Class<T> type) {
        return Json.read(envelope.body(), type);
    }

    /** {@return its stored hash} */
    public Hash hash() {
        return hash;
    }

    /** {@return the head of the book when this was its last record} */
    Head toHead() {
        return new Head(sequence(), hash, recordedAt());
    }

    boolean belongsTo(Entry entry) {
        return kind().equals(entry.kind()) && actor() == entry.actor() && subject() == entry.subject();
    }
}
