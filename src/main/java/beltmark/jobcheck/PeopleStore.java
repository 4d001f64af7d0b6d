package beltmark.jobcheck;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** What the job check reads of people. */
final class PeopleStore {

    private static final String LIST_CREWS = "SELECT id, name FROM people_crew ORDER BY name";

    private static final String LIST_MEMBERS = """
            SELECT p.id, p.name, c.name AS crew
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            WHERE p.active = 1 AND (:crew = 0 OR p.crew_id = :crew)
                AND (instr(p.roles, 'new-hire') > 0 OR instr(p.roles, 'supervisor') > 0)
            ORDER BY c.name, p.name, p.id""";

    /** Every crew. */
    static final long ALL = 0;

    List<Crew> listCrews(Handle handle) {
        return handle.createQuery(LIST_CREWS)
                .map((row, context) -> new Crew(row.getLong("id"), row.getString("name")))
                .list();
    }

    /** {@return everybody of a crew, or of {@link #ALL}, by crew and name} */
    List<Member> listMembers(Handle handle, long crew) {
        return handle.createQuery(LIST_MEMBERS)
                .bind("crew", crew)
                .map((row, context) -> new Member(row.getLong("id"), row.getString("name"), row.getString("crew")))
                .list();
    }
}
