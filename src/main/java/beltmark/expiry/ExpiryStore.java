package beltmark.expiry;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** All SQL of the list and the calendars. */
final class ExpiryStore {

    private static final String LIST_CREWS = "SELECT id, name FROM people_crew ORDER BY name";

    private static final String LIST_MEMBERS = """
            SELECT p.id, p.name, c.name AS crew
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            WHERE p.active = 1 AND (:crew = 0 OR p.crew_id = :crew)
                AND (instr(p.roles, 'new-hire') > 0 OR instr(p.roles, 'supervisor') > 0)
            ORDER BY c.name, p.name, p.id""";

    private static final String ADD_FEED = """
            INSERT INTO expiry_feed (crew_id, token_hash, language, made_by, made_at_ms, revoked_at_ms)
            VALUES (:crew, :hash, :language, :person, :at, NULL)""";

    private static final String LIST_FEEDS = """
            SELECT f.id, f.crew_id, f.language, p.name, f.made_at_ms
            FROM expiry_feed f JOIN people_person p ON p.id = f.made_by
            WHERE f.crew_id = :crew AND f.revoked_at_ms IS NULL
            ORDER BY f.id""";

    private static final String FIND_FEED = """
            SELECT f.id, f.crew_id, f.language, p.name, f.made_at_ms
            FROM expiry_feed f JOIN people_person p ON p.id = f.made_by
            WHERE f.token_hash = :hash AND f.revoked_at_ms IS NULL""";

    private static final String REVOKE_FEED =
            "UPDATE expiry_feed SET revoked_at_ms = :at WHERE id = :id AND revoked_at_ms IS NULL";

    /** Every crew. */
    static final long ALL = 0;

    List<Crew> listCrews(Handle handle) {
        return handle.createQuery(LIST_CREWS)
                .map((row, context) -> new Crew(row.getLong("id"), row.getString("name")))
                .list();
    }

    List<Member> listMembers(Handle handle, long crew) {
        return handle.createQuery(LIST_MEMBERS)
                .bind("crew", crew)
                .map((row, context) -> new Member(row.getLong("id"), row.getString("name"), row.getString("crew")))
                .list();
    }

    /** {@return the number of a new calendar} */
    long addFeed(Handle handle, long crew, byte[] tokenHash, String language, long person, Instant at) {
        return handle.createUpdate(ADD_FEED)
                .bind("crew", crew)
                .bind("hash", tokenHash)
                .bind("language", language)
                .bind("person", person)
                .bind("at", at)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    /** {@return the calendars of a crew that can be fetched} */
    List<Feed> listFeeds(Handle handle, long crew) {
        return handle.createQuery(LIST_FEEDS)
                .bind("crew", crew)
                .map(ExpiryStore::toFeed)
                .list();
    }

    Optional<Feed> findFeed(Handle handle, byte[] tokenHash) {
        return handle.createQuery(FIND_FEED)
                .bind("hash", tokenHash)
                .map(ExpiryStore::toFeed)
                .findOne();
    }

    void revokeFeed(Handle handle, long id, Instant at) {
        handle.createUpdate(REVOKE_FEED).bind("id", id).bind("at", at).execute();
    }

    private static Feed toFeed(ResultSet row, StatementContext context) throws SQLException {
        return new Feed(
                row.getLong("id"),
                row.getLong("crew_id"),
                row.getString("language"),
                row.getString("name"),
                Instant.ofEpochMilli(row.getLong("made_at_ms")));
    }
}
