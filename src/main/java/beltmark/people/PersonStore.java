package beltmark.people;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.web.NotFound;
import beltmark.web.Role;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements on crews and people. */
final class PersonStore {

    private static final String LIST_CREWS = "SELECT id, name FROM people_crew ORDER BY id";

    private static final String FIND_CREW = "SELECT id, name FROM people_crew WHERE id = :id";

    private static final String HAS_DEMO = "SELECT EXISTS (SELECT 1 FROM people_crew WHERE demo = 1)";

    private static final String ADD_CREW = "INSERT INTO people_crew (name, demo) VALUES (:name, :demo) RETURNING id";

    private static final String LIST_PEOPLE = "SELECT * FROM people_person WHERE active = 1 ORDER BY crew_id, name";

    private static final String LIST_CREW =
            "SELECT * FROM people_person WHERE crew_id = :crew AND active = 1 ORDER BY name";

    private static final String FIND_PERSON = "SELECT * FROM people_person WHERE id = :id AND active = 1";

    private static final String ADD_PERSON = """
            INSERT INTO people_person (name, crew_id, roles, language, graduation, active)
            VALUES (:name, :crew, :roles, :language, :graduation, 1) RETURNING id""";

    private static final String CHANGE_SETTINGS =
            "UPDATE people_person SET language = :language, graduation = :graduation WHERE id = :id";

    List<Crew> listCrews(Handle handle) {
        return handle.createQuery(LIST_CREWS).map(PersonStore::toCrew).list();
    }

    Crew getCrew(Handle handle, long id) {
        return handle.createQuery(FIND_CREW)
                .bind("id", id)
                .map(PersonStore::toCrew)
                .findOne()
                .orElseThrow(() -> new NotFound("crew " + id));
    }

    boolean hasDemo(Handle handle) {
        return handle.createQuery(HAS_DEMO).mapTo(Boolean.class).one();
    }

    long addCrew(Handle handle, String name, boolean demo) {
        return handle.createQuery(ADD_CREW)
                .bind("name", name)
                .bind("demo", demo)
                .mapTo(Long.class)
                .one();
    }

    List<Person> listPeople(Handle handle) {
        return handle.createQuery(LIST_PEOPLE).map(PersonStore::toPerson).list();
    }

    List<Person> listCrew(Handle handle, long crewId) {
        return handle.createQuery(LIST_CREW)
                .bind("crew", crewId)
                .map(PersonStore::toPerson)
                .list();
    }

    Optional<Person> findPerson(Handle handle, long id) {
        return handle.createQuery(FIND_PERSON)
                .bind("id", id)
                .map(PersonStore::toPerson)
                .findOne();
    }

    Person getPerson(Handle handle, long id) {
        return findPerson(handle, id).orElseThrow(() -> new NotFound("person " + id));
    }

    long addPerson(Handle handle, Newcomer newcomer, long crewId) {
        return handle.createQuery(ADD_PERSON)
                .bind("name", newcomer.name())
                .bind("crew", crewId)
                .bind("roles", Role.words(newcomer.roles()))
                .bind("language", newcomer.language().tag())
                .bind("graduation", newcomer.graduation().name())
                .mapTo(Long.class)
                .one();
    }

    void changeSettings(Handle handle, long id, Language language, Graduation graduation) {
        handle.createUpdate(CHANGE_SETTINGS)
                .bind("id", id)
                .bind("language", language.tag())
                .bind("graduation", graduation.name())
                .execute();
    }

    private static Crew toCrew(ResultSet row, StatementContext context) throws SQLException {
        return new Crew(row.getLong("id"), row.getString("name"));
    }

    static Person toPerson(ResultSet row, StatementContext context) throws SQLException {
        return new Person(
                row.getLong("id"),
                row.getString("name"),
                row.getLong("crew_id"),
                Role.ofWords(row.getString("roles")),
                Language.ofTag(row.getString("language")),
                Graduation.valueOf(row.getString("graduation")),
                row.getBoolean("active"));
    }
}
