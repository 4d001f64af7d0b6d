package beltmark.people.first;

import org.jdbi.v3.core.Handle;

/** The statements on a site that may have nobody yet. */
final class FirstStore {

    private static final String HAS_PEOPLE = "SELECT EXISTS (SELECT 1 FROM people_person)";

    private static final String ADD_CREW = "INSERT INTO people_crew (name, demo) VALUES (:name, 0) RETURNING id";

    boolean hasPeople(Handle handle) {
        return handle.createQuery(HAS_PEOPLE).mapTo(Boolean.class).one();
    }

    long addCrew(Handle handle, String name) {
        return handle.createQuery(ADD_CREW).bind("name", name).mapTo(Long.class).one();
    }
}
