package beltmark.board;

import beltmark.board.PersonFacts.Sat;
import beltmark.board.PersonFacts.Shown;
import beltmark.board.PersonFacts.Worked;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** What the board reads of people, and of the totals and records of the other features: two statements for a whole board. */
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

    private static final String LIST_FACTS = """
            WITH member AS (
                SELECT id FROM people_person
                WHERE active = 1 AND (:crew = 0 OR crew_id = :crew) AND (:person = 0 OR id = :person))
            SELECT t.person_id, 'practice' AS kind, t.family AS of, t.attempts AS number, t.clean_count AS good,
                t.last_clean_at_ms AS at_ms, NULL AS day
            FROM member JOIN practice_tally t ON t.person_id = member.id
            UNION ALL
            SELECT r.person_id, 'quiz', r.quiz, 1, r.passed, r.finished_at_ms, NULL
            FROM member JOIN lockout_result r ON r.person_id = member.id
            UNION ALL
            SELECT d.person_id, 'demonstration', d.card, d.assessor_id, 1, NULL, d.happened_on
            FROM member JOIN signoff_demonstration d ON d.person_id = member.id""";

    /** Everybody, or every crew. */
    static final long ALL = 0;

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

    /**
     * Reads the facts of many people at once.
     *
     * @param crew a crew or {@link #ALL}
     * @param person a person or {@link #ALL}
     * @param zone of the site, for the day of an instant
     * @return the facts by person; nobody without any is among them
     */
    Map<Long, PersonFacts> mapFacts(Handle handle, long crew, long person, ZoneId zone) {
        Map<Long, PersonFacts> facts = new HashMap<>();
        handle.createQuery(LIST_FACTS)
                .bind("crew", crew)
                .bind("person", person)
                .map((row, context) -> addTo(facts, row, zone))
                .forEach(added -> {});
        return facts;
    }

    private static long addTo(Map<Long, PersonFacts> facts, ResultSet row, ZoneId zone) throws SQLException {
        long person = row.getLong("person_id");
        PersonFacts own = facts.computeIfAbsent(person, PersonFacts::of);
        String of = row.getString("of");
        int good = row.getInt("good");
        switch (row.getString("kind")) {
            case "practice" -> own.worked().put(of, new Worked(row.getInt("number"), good, day(row, zone)));
            case "quiz" -> day(row, zone).ifPresent(on -> own.quizzes().add(new Sat(of, good == 1, on)));
            default -> own.shown().add(new Shown(of, row.getLong("number"), LocalDate.parse(row.getString("day"))));
        }
        return person;
    }

    private static Optional<LocalDate> day(ResultSet row, ZoneId zone) throws SQLException {
        long at = row.getLong("at_ms");
        return row.wasNull() ? Optional.empty() : Optional.of(LocalDate.ofInstant(Instant.ofEpochMilli(at), zone));
    }

    private static Member toMember(ResultSet row, StatementContext context) throws SQLException {
        return new Member(row.getLong("id"), row.getString("name"), row.getLong("crew_id"), row.getString("crew"));
    }
}
