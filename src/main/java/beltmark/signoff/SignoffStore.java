package beltmark.signoff;

import beltmark.signoff.DemonstrationRecord.Measured;
import beltmark.signoff.DemonstrationRecord.Said;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** All SQL of sign-off. */
final class SignoffStore {

    private static final String LIST_FITTERS = """
            SELECT id, name, crew_id FROM people_person
            WHERE crew_id = :crew AND active = 1 AND id <> :assessor
            ORDER BY name""";

    private static final String FIND_FITTER =
            "SELECT id, name, crew_id FROM people_person WHERE id = :id AND active = 1";

    private static final String LIST_SIGNED = """
            SELECT d.seq, p.name, d.card, d.happened_on, d.passed
            FROM (SELECT seq, person_id, card, happened_on, 1 AS passed FROM signoff_demonstration
                    WHERE assessor_id = :assessor
                UNION ALL
                SELECT seq, person_id, card, happened_on, 0 FROM signoff_not_passed
                    WHERE assessor_id = :assessor) d
                JOIN people_person p ON p.id = d.person_id
            ORDER BY d.seq DESC
            LIMIT :most""";

    private static final String ADD_DEMONSTRATION = """
            INSERT INTO signoff_demonstration (seq, person_id, assessor_id, card, card_version, tip, blade_nm,
                orientation, conveyor, happened_on)
            VALUES (:seq, :person, :assessor, :card, :cardVersion, :tip, :blade, :orientation, :conveyor, :happenedOn)""";

    private static final String ADD_NOT_PASSED = """
            INSERT INTO signoff_not_passed (seq, person_id, assessor_id, card, conveyor, happened_on, missed)
            VALUES (:seq, :person, :assessor, :card, :conveyor, :happenedOn, :missed)""";

    private static final String ADD_FLAG = "INSERT INTO signoff_flag (seq, flag) VALUES (:seq, :flag)";

    private static final String ADD_MEASURE = """
            INSERT INTO signoff_measure (seq, measure, side, typed, measured_nm, wanted_nm, tolerance_nm)
            VALUES (:seq, :measure, :side, :typed, :measured, :wanted, :tolerance)""";

    /** {@return everybody of a crew whom one of them may sign off} */
    List<Fitter> listFitters(Handle handle, long crew, long assessor) {
        return handle.createQuery(LIST_FITTERS)
                .bind("crew", crew)
                .bind("assessor", assessor)
                .map(SignoffStore::toFitter)
                .list();
    }

    Optional<Fitter> findFitter(Handle handle, long id) {
        return handle.createQuery(FIND_FITTER)
                .bind("id", id)
                .map(SignoffStore::toFitter)
                .findOne();
    }

    /** {@return what somebody signed, the latest first} */
    List<SignedLine> listSigned(Handle handle, long assessor, int most) {
        return handle.createQuery(LIST_SIGNED)
                .bind("assessor", assessor)
                .bind("most", most)
                .map((row, context) -> new SignedLine(
                        row.getLong("seq"),
                        row.getString("name"),
                        row.getString("card"),
                        LocalDate.parse(row.getString("happened_on")),
                        row.getBoolean("passed")))
                .list();
    }

    void add(Handle handle, long sequence, long person, long assessor, DemonstrationRecord body) {
        handle.createUpdate(ADD_DEMONSTRATION)
                .bind("seq", sequence)
                .bind("person", person)
                .bind("assessor", assessor)
                .bind("card", body.card())
                .bind("cardVersion", body.cardVersion())
                .bind("tip", body.tip())
                .bind("blade", body.blade())
                .bind("orientation", body.orientation())
                .bind("conveyor", body.conveyor())
                .bind("happenedOn", body.happenedOn().toString())
                .execute();
        body.measures().forEach(measured -> addMeasure(handle, sequence, measured));
    }

    void addNotPassed(Handle handle, long sequence, long person, long assessor, DemonstrationRecord body) {
        handle.createUpdate(ADD_NOT_PASSED)
                .bind("seq", sequence)
                .bind("person", person)
                .bind("assessor", assessor)
                .bind("card", body.card())
                .bind("conveyor", body.conveyor())
                .bind("happenedOn", body.happenedOn().toString())
                .bind("missed", body.missed().stream().map(Said::observation).collect(Collectors.joining(" ")))
                .execute();
    }

    void addFlag(Handle handle, long sequence, String flag) {
        handle.createUpdate(ADD_FLAG).bind("seq", sequence).bind("flag", flag).execute();
    }

    private static void addMeasure(Handle handle, long sequence, Measured measured) {
        handle.createUpdate(ADD_MEASURE)
                .bind("seq", sequence)
                .bind("measure", measured.measure())
                .bind("side", measured.side())
                .bind("typed", measured.typed())
                .bind("measured", measured.measured())
                .bind("wanted", measured.wanted())
                .bind("tolerance", measured.tolerance())
                .execute();
    }

    private static Fitter toFitter(ResultSet row, StatementContext context) throws SQLException {
        return new Fitter(row.getLong("id"), row.getString("name"), row.getLong("crew_id"));
    }
}
