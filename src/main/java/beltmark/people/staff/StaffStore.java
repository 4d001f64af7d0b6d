package beltmark.people.staff;

import beltmark.people.Crew;
import beltmark.web.NotFound;
import beltmark.web.Role;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements on what an admin changes about people. */
final class StaffStore {

    private static final String FIND = """
            SELECT p.id, p.name, p.roles, p.active, c.id AS crew_id, c.name AS crew_name
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id WHERE p.id = :id""";

    private static final String LIST_GONE = """
            SELECT p.id, p.name, p.roles, p.active, c.id AS crew_id, c.name AS crew_name
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id WHERE p.active = 0 ORDER BY p.name""";

    private static final String LIST_CREWS = "SELECT id, name FROM people_crew ORDER BY name";

    private static final String FIND_CREW = "SELECT id, name FROM people_crew WHERE id = :id";

    private static final String HAS_NAMESAKE = """
            SELECT EXISTS (SELECT 1 FROM people_person p JOIN people_person other ON other.name = p.name
                WHERE p.id = :id AND other.id <> p.id AND other.crew_id = :crew)""";

    private static final String IS_ADMIN = """
            SELECT EXISTS (SELECT 1 FROM people_person
                WHERE id = :id AND active = 1 AND ' ' || roles || ' ' LIKE '% admin %')""";

    private static final String SET_ROLES = "UPDATE people_person SET roles = :roles WHERE id = :id";

    private static final String SET_HERE = "UPDATE people_person SET active = :here WHERE id = :id";

    StaffMember get(Handle handle, long id) {
        return handle.createQuery(FIND)
                .bind("id", id)
                .map(StaffStore::toMember)
                .findOne()
                .orElseThrow(() -> new NotFound("person " + id));
    }

    List<StaffMember> listGone(Handle handle) {
        return handle.createQuery(LIST_GONE).map(StaffStore::toMember).list();
    }

    List<Crew> listCrews(Handle handle) {
        return handle.createQuery(LIST_CREWS).map(StaffStore::toCrew).list();
    }

    Optional<Crew> findCrew(Handle handle, long id) {
        return handle.createQuery(FIND_CREW)
                .bind("id", id)
                .map(StaffStore::toCrew)
                .findOne();
    }

    /** {@return whether somebody else of that person's name is in a crew} */
    boolean hasNamesake(Handle handle, long id, long crewId) {
        return handle.createQuery(HAS_NAMESAKE)
                .bind("id", id)
                .bind("crew", crewId)
                .mapTo(Boolean.class)
                .one();
    }

    boolean isAdmin(Handle handle, long id) {
        return handle.createQuery(IS_ADMIN).bind("id", id).mapTo(Boolean.class).one();
    }

    void setRoles(Handle handle, long id, Collection<Role> roles) {
        handle.createUpdate(SET_ROLES)
                .bind("id", id)
                .bind("roles", Role.words(roles))
                .execute();
    }

    void setHere(Handle handle, long id, boolean here) {
        handle.createUpdate(SET_HERE).bind("id", id).bind("here", here).execute();
    }

    private static StaffMember toMember(ResultSet row, StatementContext context) throws SQLException {
        return new StaffMember(
                row.getLong("id"),
                row.getString("name"),
                new Crew(row.getLong("crew_id"), row.getString("crew_name")),
                Role.ofWords(row.getString("roles")),
                row.getBoolean("active"),
                List.of());
    }

    private static Crew toCrew(ResultSet row, StatementContext context) throws SQLException {
        return new Crew(row.getLong("id"), row.getString("name"));
    }
}
