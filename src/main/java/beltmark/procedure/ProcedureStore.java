package beltmark.procedure;

import beltmark.core.procedure.ProcedureCard;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements of the written procedures. */
final class ProcedureStore {

    private static final String VERSIONS = """
            SELECT v.seq, v.procedure, v.version, v.machine, p.name AS person, v.entered_at_ms
            FROM procedure_version v JOIN people_person p ON p.id = v.person_id
            """;

    private static final String LIST_LATEST = VERSIONS + """
            WHERE v.version = (SELECT max(n.version) FROM procedure_version n WHERE n.procedure = v.procedure)
            ORDER BY v.machine""";

    private static final String LIST_VERSIONS = VERSIONS + "WHERE v.procedure = :procedure ORDER BY v.version DESC";

    private static final String LIST_HOLDERS = """
            SELECT p.name AS person, c.name AS crew, max(h.version) AS version
            FROM procedure_holder h
            JOIN people_person p ON p.id = h.person_id
            JOIN people_crew c ON c.id = p.crew_id
            WHERE h.procedure = :procedure AND p.active = 1
            GROUP BY p.id
            ORDER BY c.name, p.name""";

    private static final String ADD_VERSION = """
            INSERT INTO procedure_version (seq, procedure, version, machine, person_id, entered_at_ms)
            VALUES (:seq, :procedure, :version, :machine, :person, :at)""";

    List<VersionRow> listLatest(Handle handle) {
        return handle.createQuery(LIST_LATEST).map(ProcedureStore::toRow).list();
    }

    /** {@return the versions of a procedure, the latest first} */
    List<VersionRow> listVersions(Handle handle, String procedure) {
        return handle.createQuery(LIST_VERSIONS)
                .bind("procedure", procedure)
                .map(ProcedureStore::toRow)
                .list();
    }

    Optional<VersionRow> findLatest(Handle handle, String procedure) {
        return listVersions(handle, procedure).stream().findFirst();
    }

    List<Holder> listHolders(Handle handle, String procedure) {
        return handle.createQuery(LIST_HOLDERS)
                .bind("procedure", procedure)
                .map((row, context) ->
                        new Holder(row.getString("person"), row.getString("crew"), row.getInt("version")))
                .list();
    }

    void addVersion(Handle handle, long record, ProcedureCard card, long person, Instant at) {
        handle.createUpdate(ADD_VERSION)
                .bind("seq", record)
                .bind("procedure", card.id())
                .bind("version", card.version())
                .bind("machine", card.machine())
                .bind("person", person)
                .bind("at", at)
                .execute();
    }

    private static VersionRow toRow(ResultSet row, StatementContext context) throws SQLException {
        return new VersionRow(
                row.getLong("seq"),
                row.getString("procedure"),
                row.getInt("version"),
                row.getString("machine"),
                row.getString("person"),
                Instant.ofEpochMilli(row.getLong("entered_at_ms")));
    }
}
