package beltmark.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;

/** The statements on who is in which crew from when to when. */
final class MembershipStore {

    private static final String LIST = """
            SELECT m.person_id, m.from_date, m.to_date, c.id AS crew_id, c.name AS crew_name
            FROM people_membership m JOIN people_crew c ON c.id = m.crew_id
            WHERE m.person_id = :person ORDER BY m.from_date""";

    private static final String FIND_AT = """
            SELECT m.person_id, m.from_date, m.to_date, c.id AS crew_id, c.name AS crew_name
            FROM people_membership m JOIN people_crew c ON c.id = m.crew_id
            WHERE m.person_id = :person AND m.from_date <= :date AND (m.to_date IS NULL OR m.to_date > :date)""";

    private static final String LIST_CREW_AT = """
            SELECT m.person_id, m.from_date, m.to_date, c.id AS crew_id, c.name AS crew_name
            FROM people_membership m JOIN people_crew c ON c.id = m.crew_id
            WHERE m.crew_id = :crew AND m.from_date <= :date AND (m.to_date IS NULL OR m.to_date > :date)
            ORDER BY m.person_id""";

    private static final String END_BEFORE = """
            UPDATE people_membership SET to_date = :date
            WHERE person_id = :person AND from_date < :date AND (to_date IS NULL OR to_date > :date)""";

    private static final String ADD = """
            INSERT INTO people_membership (person_id, from_date, to_date, crew_id)
            VALUES (:person, :date, :to, :crew)
            ON CONFLICT (person_id, from_date) DO UPDATE SET crew_id = excluded.crew_id, to_date = excluded.to_date""";

    private static final String END_LAST = """
            UPDATE people_membership SET to_date = :date
            WHERE person_id = :person AND to_date IS NULL AND from_date <= :date""";

    private static final String SET_CREW = """
            UPDATE people_person SET crew_id =
                (SELECT crew_id FROM people_membership WHERE person_id = :person ORDER BY from_date DESC LIMIT 1)
            WHERE id = :person""";

    List<Membership> list(Handle handle, long personId) {
        return handle.createQuery(LIST)
                .bind("person", personId)
                .map(MembershipStore::toMembership)
                .list();
    }

    Optional<Membership> findAt(Handle handle, long personId, LocalDate date) {
        return handle.createQuery(FIND_AT)
                .bind("person", personId)
                .bind("date", date.toString())
                .map(MembershipStore::toMembership)
                .findOne();
    }

    List<Membership> listCrewAt(Handle handle, long crewId, LocalDate date) {
        return handle.createQuery(LIST_CREW_AT)
                .bind("crew", crewId)
                .bind("date", date.toString())
                .map(MembershipStore::toMembership)
                .list();
    }

    void endBefore(Handle handle, long personId, LocalDate date) {
        handle.createUpdate(END_BEFORE)
                .bind("person", personId)
                .bind("date", date.toString())
                .execute();
    }

    /** Adds a membership, or changes the crew of the one that begins on that day. */
    void add(Handle handle, long personId, long crewId, LocalDate date, @Nullable LocalDate to) {
        handle.createUpdate(ADD)
                .bind("person", personId)
                .bind("crew", crewId)
                .bind("date", date.toString())
                .bind("to", to == null ? null : to.toString())
                .execute();
    }

    void endLast(Handle handle, long personId, LocalDate date) {
        handle.createUpdate(END_LAST)
                .bind("person", personId)
                .bind("date", date.toString())
                .execute();
    }

    /** Puts into the person's row the crew that the last membership is of. */
    void setCrew(Handle handle, long personId) {
        handle.createUpdate(SET_CREW).bind("person", personId).execute();
    }

    private static Membership toMembership(ResultSet row, StatementContext context) throws SQLException {
        String to = row.getString("to_date");
        return new Membership(
                row.getLong("person_id"),
                new Crew(row.getLong("crew_id"), row.getString("crew_name")),
                LocalDate.parse(row.getString("from_date")),
                to == null ? null : LocalDate.parse(to));
    }
}
