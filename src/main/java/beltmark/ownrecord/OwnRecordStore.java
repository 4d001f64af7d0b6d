package beltmark.ownrecord;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statement on all records of a person; it walks the whole book, which is asked for seldom. */
final class OwnRecordStore {

    private static final String LIST = """
            SELECT e.seq, e.kind, coalesce(about.name, '') AS about, coalesce(by_whom.name, '') AS by_whom,
                e.happened_at_ms, e.recorded_at_ms, e.body
            FROM recordbook_entry e
            LEFT JOIN people_person about ON about.id = e.subject
            LEFT JOIN people_person by_whom ON by_whom.id = e.actor
            WHERE e.subject = :person OR e.actor = :person ORDER BY e.seq""";

    List<OwnEntry> list(Handle handle, long personId) {
        return handle.createQuery(LIST)
                .bind("person", personId)
                .map(OwnRecordStore::toEntry)
                .list();
    }

    private static OwnEntry toEntry(ResultSet row, StatementContext context) throws SQLException {
        return new OwnEntry(
                row.getLong("seq"),
                row.getString("kind"),
                row.getString("about"),
                row.getString("by_whom"),
                Instant.ofEpochMilli(row.getLong("happened_at_ms")),
                Instant.ofEpochMilli(row.getLong("recorded_at_ms")),
                row.getString("body"));
    }
}
