package beltmark.board;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** What the board reads of people, and of what they have tried without its counting for anything. */
final class BoardStore {

    private static final String LIST_CREWS = "SELECT id, name FROM people_crew ORDER BY name";

    private static final String LIST_MEMBERS = """
            SELECT p.id, p.name, p.crew_id, c.name AS crew
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            WHERE p.active = 1 AND (:crew = 0 OR p.crew_id = :crew)
                AND (instr(p.roles, 'new-hire') > 0 OR instr(p.roles, 'supervisor') > 0)
            ORDER BY c.name, p.name""";

    private static final String FIND_MEMBER = """
            SELECT p.id, p.name, p.crew_id, c.name AS crew
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            WHERE p.id = :id AND p.active = 1""";

    private static final String LIST_BEGUN = """
            SELECT p.value AS person_id, f.value AS family
            FROM json_each(:people) p CROSS JOIN json_each(:families) f
            WHERE EXISTS (
                SELECT 1 FROM practice_attempt
                WHERE person_id = p.value AND family = f.value AND finished_at_ms <= :upTo)""";

    private static final String LIST_SAT = """
            SELECT r.person_id, r.quiz, r.finished_at_ms
            FROM json_each(:people) p CROSS JOIN lockout_result r ON r.seq = (
                SELECT seq FROM lockout_result
                WHERE person_id = p.value AND finished_at_ms <= :upTo
                ORDER BY seq DESC LIMIT 1)""";

    /** Every crew. */
    static final long ALL = 0;

    /** The last sitting of a quiz. */
    record Sat(long person, String quiz, Instant at) {}

    List<Crew> listCrews(Handle handle) {
        return handle.createQuery(LIST_CREWS)
                .map((row, context) -> new Crew(row.getLong("id"), row.getString("name")))
                .list();
    }

    /** {@return the people of a crew, or of {@link #ALL}, by crew and name} */
    List<Member> listMembers(Handle handle, long crew) {
        return handle.createQuery(LIST_MEMBERS)
                .bind("crew", crew)
                .map(BoardStore::toMember)
                .list();
    }

    Optional<Member> findMember(Handle handle, long person) {
        return handle.createQuery(FIND_MEMBER)
                .bind("id", person)
                .map(BoardStore::toMember)
                .findOne();
    }

    /** {@return the families of which each person had finished a problem} */
    Map<Long, Set<String>> mapBegun(Handle handle, Collection<Long> people, Collection<String> families, Instant upTo) {
        Map<Long, Set<String>> begun = new HashMap<>();
        handle.createQuery(LIST_BEGUN)
                .bind("people", people.toString())
                .bind("families", "[\"" + String.join("\",\"", families) + "\"]")
                .bind("upTo", upTo)
                .map((row, context) -> begun.computeIfAbsent(row.getLong("person_id"), person -> new HashSet<>())
                        .add(row.getString("family")))
                .forEach(added -> {});
        return begun;
    }

    /** {@return the last sitting of each person} */
    List<Sat> listSat(Handle handle, Collection<Long> people, Instant upTo) {
        return handle.createQuery(LIST_SAT)
                .bind("people", people.toString())
                .bind("upTo", upTo)
                .map((row, context) -> new Sat(
                        row.getLong("person_id"),
                        row.getString("quiz"),
                        Instant.ofEpochMilli(row.getLong("finished_at_ms"))))
                .list();
    }

    private static Member toMember(ResultSet row, StatementContext context) throws SQLException {
        return new Member(row.getLong("id"), row.getString("name"), row.getLong("crew_id"), row.getString("crew"));
    }
}
