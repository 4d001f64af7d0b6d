package beltmark.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements on sessions. */
final class SessionStore {

    private static final String ADD = """
            INSERT INTO people_session (token_hash, person_id, started_at_ms, seen_at_ms)
            VALUES (:hash, :person, :now, :now)""";

    private static final String FIND = """
            SELECT person.*, session.seen_at_ms FROM people_session AS session
            JOIN people_person AS person ON person.id = session.person_id
            WHERE session.token_hash = :hash AND person.active = 1
                AND session.seen_at_ms > :idleSince AND session.started_at_ms > :startedSince""";

    private static final String SEE = "UPDATE people_session SET seen_at_ms = :now WHERE token_hash = :hash";

    private static final String END = "DELETE FROM people_session WHERE token_hash = :hash";

    private static final String END_OF_PERSON = "DELETE FROM people_session WHERE person_id = :person";

    private static final String CLEAR_OLD =
            "DELETE FROM people_session WHERE seen_at_ms <= :idleSince OR started_at_ms <= :startedSince";

    void add(Handle handle, byte[] tokenHash, long personId, Instant now) {
        handle.createUpdate(ADD)
                .bind("hash", tokenHash)
                .bind("person", personId)
                .bind("now", now)
                .execute();
    }

    Optional<Found> find(Handle handle, byte[] tokenHash, Instant idleSince, Instant startedSince) {
        return handle.createQuery(FIND)
                .bind("hash", tokenHash)
                .bind("idleSince", idleSince)
                .bind("startedSince", startedSince)
                .map(SessionStore::toFound)
                .findOne();
    }

    void see(Handle handle, byte[] tokenHash, Instant now) {
        handle.createUpdate(SEE).bind("hash", tokenHash).bind("now", now).execute();
    }

    void end(Handle handle, byte[] tokenHash) {
        handle.createUpdate(END).bind("hash", tokenHash).execute();
    }

    void endOfPerson(Handle handle, long personId) {
        handle.createUpdate(END_OF_PERSON).bind("person", personId).execute();
    }

    void clearOld(Handle handle, Instant idleSince, Instant startedSince) {
        handle.createUpdate(CLEAR_OLD)
                .bind("idleSince", idleSince)
                .bind("startedSince", startedSince)
                .execute();
    }

    private static Found toFound(ResultSet row, StatementContext context) throws SQLException {
        return new Found(PersonStore.toPerson(row, context), Instant.ofEpochMilli(row.getLong("seen_at_ms")));
    }

    /**
     * A living session.
     *
     * @param person whose it is
     * @param seenAt when it was last noted as used
     */
    record Found(Person person, Instant seenAt) {}
}
