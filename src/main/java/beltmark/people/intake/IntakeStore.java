package beltmark.people.intake;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on who is there, and on new crews. */
final class IntakeStore {

    private static final String LIST_NAMES = """
            SELECT p.name, p.active, c.name AS crew FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            ORDER BY p.id""";

    private static final String LIST_CREWS = "SELECT name FROM people_crew ORDER BY id";

    private static final String FIND_CREW = "SELECT id FROM people_crew WHERE name = :name";

    private static final String ADD_CREW = "INSERT INTO people_crew (name, demo) VALUES (:name, 0) RETURNING id";

    /**
     * Somebody who is or was there.
     *
     * @param name as it is shown
     * @param crew the name of the crew
     * @param here false after leaving
     */
    record Known(String name, String crew, boolean here) {}

    List<Known> listKnown(Handle handle) {
        return handle.createQuery(LIST_NAMES)
                .map((row, context) ->
                        new Known(row.getString("name"), row.getString("crew"), row.getBoolean("active")))
                .list();
    }

    List<String> listCrews(Handle handle) {
        return handle.createQuery(LIST_CREWS).mapTo(String.class).list();
    }

    Optional<Long> findCrew(Handle handle, String name) {
        return handle.createQuery(FIND_CREW)
                .bind("name", name)
                .mapTo(Long.class)
                .findOne();
    }

    long addCrew(Handle handle, String name) {
        return handle.createQuery(ADD_CREW).bind("name", name).mapTo(Long.class).one();
    }
}
