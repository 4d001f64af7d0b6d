package beltmark.signoff;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on assessors. */
final class AssessorStore {

    private static final String ADD = """
            INSERT INTO signoff_assessor (seq, person_id, card, first_day, last_day)
            VALUES (:seq, :person, :card, :first, :last)""";

    private static final String FIND = """
            SELECT seq, first_day, last_day FROM signoff_assessor
            WHERE person_id = :person AND card = :card
            ORDER BY seq DESC LIMIT 1""";

    private static final String LIST_CANDIDATES = """
            SELECT id, name, crew_id FROM people_person
            WHERE active = 1 AND instr(' ' || roles || ' ', ' supervisor ') > 0
            ORDER BY name""";

    /** The latest appointment of a person on a card. */
    record Found(long record, LocalDate first, LocalDate last) {

        boolean covers(LocalDate on) {
            return !on.isBefore(first) && !on.isAfter(last);
        }
    }

    void add(Handle handle, long sequence, long person, Appointment body) {
        handle.createUpdate(ADD)
                .bind("seq", sequence)
                .bind("person", person)
                .bind("card", body.card())
                .bind("first", body.first().toString())
                .bind("last", body.last().toString())
                .execute();
    }

    Optional<Found> find(Handle handle, long person, String card) {
        return handle.createQuery(FIND)
                .bind("person", person)
                .bind("card", card)
                .map((row, context) -> new Found(
                        row.getLong("seq"),
                        LocalDate.parse(row.getString("first_day")),
                        LocalDate.parse(row.getString("last_day"))))
                .findOne();
    }

    /** {@return everybody whose role it is to sign off, by name} */
    List<Fitter> listCandidates(Handle handle) {
        return handle.createQuery(LIST_CANDIDATES)
                .map((row, context) -> new Fitter(row.getLong("id"), row.getString("name"), row.getLong("crew_id")))
                .list();
    }
}
