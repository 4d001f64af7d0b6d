package beltmark.certificate;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements on certificates and on whose they are. */
final class CertificateStore {

    private static final String ADD = """
            INSERT INTO certificate_issued (seq, serial, person_id, qualification, from_date, to_date, token)
            VALUES (:seq, :serial, :person, :qualification, :from, :to, :token)""";

    private static final String REVOKE =
            "INSERT INTO certificate_revoked (seq, of_seq, reason) VALUES (:seq, :of, :reason)";

    private static final String FIND = """
            SELECT c.seq, c.serial, c.person_id, p.crew_id, c.qualification, c.from_date, c.to_date, e.recorded_at_ms,
                c.token, r.reason,
                NOT EXISTS (SELECT 1 FROM certificate_issued later WHERE later.person_id = c.person_id
                    AND later.qualification = c.qualification AND later.seq > c.seq) AS is_latest
            FROM certificate_issued c
            JOIN recordbook_entry e ON e.seq = c.seq
            JOIN people_person p ON p.id = c.person_id
            LEFT JOIN certificate_revoked r ON r.of_seq = c.seq
            WHERE c.serial = :serial""";

    private static final String LIST = """
            SELECT c.seq, c.serial, c.person_id, p.crew_id, c.qualification, c.from_date, c.to_date, e.recorded_at_ms,
                c.token, r.reason,
                NOT EXISTS (SELECT 1 FROM certificate_issued later WHERE later.person_id = c.person_id
                    AND later.qualification = c.qualification AND later.seq > c.seq) AS is_latest
            FROM certificate_issued c
            JOIN recordbook_entry e ON e.seq = c.seq
            JOIN people_person p ON p.id = c.person_id
            LEFT JOIN certificate_revoked r ON r.of_seq = c.seq
            WHERE c.person_id = :person ORDER BY c.seq DESC""";

    private static final String FIND_HOLDER =
            "SELECT id, name, crew_id FROM people_person WHERE id = :id AND active = 1";

    private static final String LIST_HOLDERS =
            "SELECT id, name, crew_id FROM people_person WHERE active = 1 ORDER BY name";

    void add(Handle handle, long record, long person, Payload payload, String token) {
        handle.createUpdate(ADD)
                .bind("seq", record)
                .bind("serial", payload.serial())
                .bind("person", person)
                .bind("qualification", payload.qualification())
                .bind("from", payload.from().toString())
                .bind("to", payload.to().toString())
                .bind("token", token)
                .execute();
    }

    void revoke(Handle handle, long record, long issued, String reason) {
        handle.createUpdate(REVOKE)
                .bind("seq", record)
                .bind("of", issued)
                .bind("reason", reason)
                .execute();
    }

    Optional<Issued> find(Handle handle, String serial) {
        return handle.createQuery(FIND)
                .bind("serial", serial)
                .map(CertificateStore::toIssued)
                .findOne();
    }

    /** {@return the certificates of a person, the latest first} */
    List<Issued> list(Handle handle, long person) {
        return handle.createQuery(LIST)
                .bind("person", person)
                .map(CertificateStore::toIssued)
                .list();
    }

    Optional<Holder> findHolder(Handle handle, long person) {
        return handle.createQuery(FIND_HOLDER)
                .bind("id", person)
                .map(CertificateStore::toHolder)
                .findOne();
    }

    List<Holder> listHolders(Handle handle) {
        return handle.createQuery(LIST_HOLDERS).map(CertificateStore::toHolder).list();
    }

    private static Holder toHolder(ResultSet row, StatementContext context) throws SQLException {
        return new Holder(row.getLong("id"), row.getString("name"), row.getLong("crew_id"));
    }

    private static Issued toIssued(ResultSet row, StatementContext context) throws SQLException {
        return new Issued(
                row.getLong("seq"),
                row.getString("serial"),
                row.getLong("person_id"),
                row.getLong("crew_id"),
                row.getString("qualification"),
                LocalDate.parse(row.getString("from_date")),
                LocalDate.parse(row.getString("to_date")),
                Instant.ofEpochMilli(row.getLong("recorded_at_ms")),
                row.getString("token"),
                row.getString("reason"),
                row.getBoolean("is_latest"));
    }
}
