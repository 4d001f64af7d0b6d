package beltmark.practice.pack;

import beltmark.core.units.Graduation;
import beltmark.practice.pack.PackRecord.Asked;
import beltmark.practice.pack.PackRecord.SheetRecord;
import beltmark.texts.Language;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** All SQL of paper packs. */
final class PackStore {

    private static final String LIST_RECEIVERS = """
            SELECT p.id, p.name, c.name AS crew, p.language, p.graduation
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            WHERE p.crew_id = :crew AND p.active = 1
            ORDER BY p.name
            """;

    private static final String ADD_PACK = """
            INSERT INTO practice_pack (seq, trainer_id, crew_id, made_at_ms) VALUES (:seq, :trainer, :crew, :at)
            """;

    private static final String ADD_PROBLEM = """
            INSERT INTO practice_pack_problem (seq, person_id, place, family, version, code)
            VALUES (:seq, :person, :place, :family, :version, :code)
            """;

    private static final String LIST_PACKS = """
            SELECT seq, made_at_ms FROM practice_pack WHERE trainer_id = :trainer ORDER BY seq DESC LIMIT 20
            """;

    private static final String FIND_MADE_AT =
            "SELECT made_at_ms FROM practice_pack WHERE seq = :seq AND trainer_id = :trainer";

    private static final String LIST_PACK_RECEIVERS = """
            SELECT DISTINCT p.id, p.name, c.name AS crew, p.language, p.graduation
            FROM practice_pack_problem s
                JOIN people_person p ON p.id = s.person_id
                JOIN people_crew c ON c.id = p.crew_id
            WHERE s.seq = :seq
            ORDER BY p.name
            """;

    private static final String LIST_PROBLEMS = """
            SELECT family, version, code FROM practice_pack_problem
            WHERE seq = :seq AND person_id = :person ORDER BY place
            """;

    private static final String IS_ENTERED = """
            SELECT EXISTS (SELECT 1 FROM practice_pack_problem s
                JOIN practice_attempt t ON t.person_id = s.person_id AND t.family = s.family
                    AND t.version = s.version AND t.code = s.code
                WHERE s.seq = :seq AND s.person_id = :person)
            """;

    List<Receiver> listReceivers(Handle handle, long crew) {
        return handle.createQuery(LIST_RECEIVERS)
                .bind("crew", crew)
                .map((row, context) -> receiver(row))
                .list();
    }

    void add(Handle handle, long seq, long trainer, long crew, Instant at, List<SheetRecord> sheets) {
        handle.createUpdate(ADD_PACK)
                .bind("seq", seq)
                .bind("trainer", trainer)
                .bind("crew", crew)
                .bind("at", at)
                .execute();
        for (SheetRecord sheet : sheets) {
            int place = 1;
            for (Asked asked : sheet.problems()) {
                handle.createUpdate(ADD_PROBLEM)
                        .bind("seq", seq)
                        .bind("person", sheet.person())
                        .bind("place", place++)
                        .bind("family", asked.family())
                        .bind("version", asked.version())
                        .bind("code", asked.code())
                        .execute();
            }
        }
    }

    List<PackLine> listPacks(Handle handle, long trainer) {
        return handle.createQuery(LIST_PACKS)
                .bind("trainer", trainer)
                .map((row, context) ->
                        new PackLine(row.getLong("seq"), Instant.ofEpochMilli(row.getLong("made_at_ms"))))
                .list();
    }

    /** {@return a pack that the trainer made, if there is one of that number} */
    Optional<Pack> find(Handle handle, long seq, long trainer) {
        return handle.createQuery(FIND_MADE_AT)
                .bind("seq", seq)
                .bind("trainer", trainer)
                .mapTo(Long.class)
                .findOne()
                .map(at -> new Pack(seq, Instant.ofEpochMilli(at), listSheets(handle, seq)));
    }

    private static List<Pack.Sheet> listSheets(Handle handle, long seq) {
        return handle
                .createQuery(LIST_PACK_RECEIVERS)
                .bind("seq", seq)
                .map((row, context) -> receiver(row))
                .list()
                .stream()
                .map(person -> new Pack.Sheet(
                        person, listProblems(handle, seq, person.id()), isEntered(handle, seq, person.id())))
                .toList();
    }

    private static List<Asked> listProblems(Handle handle, long seq, long person) {
        return handle.createQuery(LIST_PROBLEMS)
                .bind("seq", seq)
                .bind("person", person)
                .map((row, context) -> new Asked(row.getString("family"), row.getInt("version"), row.getString("code")))
                .list();
    }

    private static boolean isEntered(Handle handle, long seq, long person) {
        return handle.createQuery(IS_ENTERED)
                .bind("seq", seq)
                .bind("person", person)
                .mapTo(Boolean.class)
                .one();
    }

    private static Receiver receiver(ResultSet row) throws SQLException {
        return new Receiver(
                row.getLong("id"),
                row.getString("name"),
                row.getString("crew"),
                Language.ofTag(row.getString("language")),
                Graduation.valueOf(row.getString("graduation")));
    }
}
