package beltmark.sheet;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** All SQL of set-up sheets. */
final class SheetStore {

    private static final String ADD = """
            INSERT INTO sheet_saved (seq, crew_id, person_id, card, tip, place, saved_at_ms)
            VALUES (:seq, :crew, :person, :card, :tip, :place, :at)
            """;
    private static final String LIST = """
            SELECT s.seq, s.card, s.tip, s.place, p.name, s.saved_at_ms
            FROM sheet_saved s JOIN people_person p ON p.id = s.person_id
            WHERE s.crew_id = :crew
            ORDER BY s.seq DESC LIMIT :most
            """;
    private static final String FIND = """
            SELECT s.seq, s.card, s.tip, s.place, p.name, s.saved_at_ms
            FROM sheet_saved s JOIN people_person p ON p.id = s.person_id
            WHERE s.seq = :seq AND s.crew_id = :crew
            """;

    void add(Handle handle, long crew, long person, SavedSheet sheet) {
        handle.createUpdate(ADD)
                .bind("seq", sheet.record())
                .bind("crew", crew)
                .bind("person", person)
                .bind("card", sheet.card())
                .bind("tip", sheet.tip())
                .bind("place", sheet.place())
                .bind("at", sheet.at())
                .execute();
    }

    /** {@return the sheets of a crew, the newest first} */
    List<SavedSheet> list(Handle handle, long crew, int most) {
        return handle.createQuery(LIST)
                .bind("crew", crew)
                .bind("most", most)
                .map((row, context) -> sheet(row))
                .list();
    }

    /** {@return a sheet of that crew} */
    Optional<SavedSheet> find(Handle handle, long crew, long record) {
        return handle.createQuery(FIND)
                .bind("seq", record)
                .bind("crew", crew)
                .map((row, context) -> sheet(row))
                .findOne();
    }

    private static SavedSheet sheet(ResultSet row) throws SQLException {
        return new SavedSheet(
                row.getLong("seq"),
                row.getString("card"),
                row.getString("tip"),
                row.getString("place"),
                row.getString("name"),
                Instant.ofEpochMilli(row.getLong("saved_at_ms")));
    }
}
