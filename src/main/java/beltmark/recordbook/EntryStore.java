package beltmark.recordbook;

import beltmark.db.Integrity;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.result.ResultIterator;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;

/** The statements of the record book. There is none that updates or deletes. */
final class EntryStore {

    private static final String FIND = "SELECT * FROM recordbook_entry WHERE seq = :seq";

    private static final String FIND_BY_OPERATION = "SELECT * FROM recordbook_entry WHERE operation = :operation";

    private static final String FIND_HEAD =
            "SELECT seq, hash, recorded_at_ms FROM recordbook_entry ORDER BY seq DESC LIMIT 1";

    private static final String LIST = "SELECT * FROM recordbook_entry ORDER BY seq";

    private static final String ADD = """
            INSERT INTO recordbook_entry (seq, format, kind, operation, subject, actor, happened_at_ms, recorded_at_ms,
                body, previous_hash, hash)
            VALUES (:seq, :format, :kind, :operation, :subject, :actor, :happenedAt, :recordedAt,
                :body, :previousHash, :hash)""";

    Optional<StoredEntry> find(Handle handle, long sequence) {
        return handle.createQuery(FIND)
                .bind("seq", sequence)
                .map(EntryStore::toEntry)
                .findOne();
    }

    Optional<StoredEntry> findByOperation(Handle handle, String operation) {
        return handle.createQuery(FIND_BY_OPERATION)
                .bind("operation", operation)
                .map(EntryStore::toEntry)
                .findOne();
    }

    Head getHead(Handle handle) {
        return handle.createQuery(FIND_HEAD)
                .map((row, context) -> new Head(
                        row.getLong("seq"), hash(row, "hash"), Instant.ofEpochMilli(row.getLong("recorded_at_ms"))))
                .findOne()
                .orElse(Head.OF_EMPTY_BOOK);
    }

    /** Walks all records in order, without holding them, to the end or to the first that does not fit. */
    void walk(Handle handle, ChainWalk walk) {
        try (ResultIterator<StoredEntry> entries =
                handle.createQuery(LIST).map(EntryStore::toEntry).iterator()) {
            while (entries.hasNext()) {
                if (!walk.accepts(entries.next())) {
                    return;
                }
            }
        } catch (IllegalArgumentException unreadable) {
            walk.refuseNext();
        } catch (JdbiException e) {
            if (!Integrity.isDamage(e)) {
                throw e;
            }
            walk.refuseNext();
        }
    }

    void add(Handle handle, Envelope envelope) {
        handle.createUpdate(ADD)
                .bind("seq", envelope.sequence())
                .bind("format", envelope.format())
                .bind("kind", envelope.kind())
                .bind("operation", envelope.operation())
                .bind("subject", envelope.subject())
                .bind("actor", envelope.actor())
                .bind("happenedAt", envelope.happenedAt())
                .bind("recordedAt", envelope.recordedAt())
                .bind("body", envelope.body())
                .bind("previousHash", envelope.previousHash().bytes())
                .bind("hash", envelope.hash().bytes())
                .execute();
    }

    private static StoredEntry toEntry(ResultSet row, StatementContext context) throws SQLException {
        Envelope envelope = new Envelope(
                row.getInt("format"),
                row.getLong("seq"),
                text(row, "kind"),
                text(row, "operation"),
                row.getLong("subject"),
                row.getLong("actor"),
                Instant.ofEpochMilli(row.getLong("happened_at_ms")),
                Instant.ofEpochMilli(row.getLong("recorded_at_ms")),
                text(row, "body"),
                hash(row, "previous_hash"));
        return new StoredEntry(envelope, hash(row, "hash"));
    }

    private static String text(ResultSet row, String column) throws SQLException {
        return require(row.getString(column), column);
    }

    private static Hash hash(ResultSet row, String column) throws SQLException {
        return Hash.of(require(row.getBytes(column), column));
    }

    /** No column is ever empty, but in a file that somebody tampered with. */
    private static <T> T require(@Nullable T value, String column) {
        if (value == null) {
            throw new IllegalArgumentException("a record without " + column);
        }
        return value;
    }
}
