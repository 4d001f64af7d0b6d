package beltmark.practice;

import beltmark.core.problem.Problem;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Length;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** All SQL of practice. */
final class AttemptStore {

    private static final String FIND_ATTEMPT = """
            SELECT id FROM practice_attempt
            WHERE person_id = :person AND family = :family AND version = :version AND code = :code
            """;

    private static final String ADD_ATTEMPT = """
            INSERT INTO practice_attempt (person_id, family, version, code, card, finished_at_ms, clean)
            VALUES (:person, :family, :version, :code, :card, NULL, 0)
            """;

    private static final String FINISH_ATTEMPT =
            "UPDATE practice_attempt SET finished_at_ms = :at, clean = :clean WHERE id = :id";

    private static final String COUNT_ATTEMPT = """
            INSERT INTO practice_tally (person_id, family, attempts, clean_count, last_clean_at_ms, last_clean_attempt)
            VALUES (:person, :family, 1, :clean, iif(:clean, :at, NULL), iif(:clean, :id, NULL))
            ON CONFLICT (person_id, family) DO UPDATE SET
                attempts = attempts + 1,
                clean_count = clean_count + excluded.clean_count,
                last_clean_at_ms = coalesce(excluded.last_clean_at_ms, last_clean_at_ms),
                last_clean_attempt = coalesce(excluded.last_clean_attempt, last_clean_attempt)
            """;

    private static final String ADD_ANSWER = """
            INSERT INTO practice_answer (seq, attempt_id, part, verdict, answered_at_ms)
            VALUES (:seq, :attempt, :part, :verdict, :at)
            """;

    private static final String ADD_FIGURE = """
            INSERT INTO practice_figure (seq, blank, typed, length_nm, amount, option, verdict, slip)
            VALUES (:seq, :blank, :typed, :length, :amount, :option, :verdict, :slip)
            """;

    private static final String LIST_ANSWERS = """
            SELECT a.seq, a.part, a.verdict AS worst, f.blank, f.typed, f.length_nm, f.amount, f.option, f.verdict, f.slip
            FROM practice_answer a LEFT JOIN practice_figure f ON f.seq = a.seq
            WHERE a.attempt_id = :attempt
            ORDER BY a.seq
            """;

    /**
     * One answer to a part, or the leaving of one.
     *
     * @param part the part's id
     * @param verdict of the worst blank, or how the part was left
     * @param figures what was typed; none when the part was left
     */
    record Event(String part, String verdict, List<Figure> figures) {}

    /** {@return the number of a person's attempt at a problem, if there is one} */
    Optional<Long> findAttempt(Handle handle, long person, Problem problem) {
        return handle.createQuery(FIND_ATTEMPT)
                .bind("person", person)
                .bind("family", problem.family())
                .bind("version", problem.version())
                .bind("code", problem.code().text())
                .mapTo(Long.class)
                .findOne();
    }

    /** {@return the number of a new attempt} */
    long addAttempt(Handle handle, long person, Problem problem) {
        return handle.createUpdate(ADD_ATTEMPT)
                .bind("person", person)
                .bind("family", problem.family())
                .bind("version", problem.version())
                .bind("code", problem.code().text())
                .bind("card", problem.scene().findCard().map(HardwareCard::id).orElse(""))
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    void addEvent(Handle handle, long sequence, long attempt, Event event, Instant at) {
        handle.createUpdate(ADD_ANSWER)
                .bind("seq", sequence)
                .bind("attempt", attempt)
                .bind("part", event.part())
                .bind("verdict", event.verdict())
                .bind("at", at)
                .execute();
        event.figures().forEach(figure -> addFigure(handle, sequence, figure));
    }

    private void addFigure(Handle handle, long sequence, Figure figure) {
        handle.createUpdate(ADD_FIGURE)
                .bind("seq", sequence)
                .bind("blank", figure.blank())
                .bind("typed", figure.typed())
                .bind("length", figure.length())
                .bind("amount", figure.amount())
                .bind("option", figure.option())
                .bind("verdict", figure.verdict())
                .bind("slip", figure.slip())
                .execute();
    }

    void finish(Handle handle, long attempt, long person, String family, boolean clean, Instant at) {
        handle.createUpdate(FINISH_ATTEMPT)
                .bind("id", attempt)
                .bind("clean", clean)
                .bind("at", at)
                .execute();
        handle.createUpdate(COUNT_ATTEMPT)
                .bind("id", attempt)
                .bind("person", person)
                .bind("family", family)
                .bind("clean", clean)
                .bind("at", at)
                .execute();
    }

    /** {@return what happened in an attempt, in order} */
    List<Event> listEvents(Handle handle, long attempt) {
        Map<Long, Event> events = new LinkedHashMap<>();
        handle.createQuery(LIST_ANSWERS)
                .bind("attempt", attempt)
                .map((row, context) -> new Row(
                        row.getLong("seq"),
                        new Event(row.getString("part"), row.getString("worst"), new ArrayList<>()),
                        figure(row)))
                .forEach(row -> {
                    Event event = events.computeIfAbsent(row.sequence, seq -> row.event);
                    if (row.figure != null) {
                        event.figures().add(row.figure);
                    }
                });
        return List.copyOf(events.values());
    }

    private record Row(long sequence, Event event, @Nullable Figure figure) {}

    private static @Nullable Figure figure(ResultSet row) throws SQLException {
        String blank = row.getString("blank");
        if (blank == null) {
            return null;
        }
        long nanometres = row.getLong("length_nm");
        Length length = row.wasNull() ? null : Length.ofNanometres(nanometres);
        double number = row.getDouble("amount");
        Double amount = row.wasNull() ? null : Double.valueOf(number);
        return new Figure(
                blank,
                row.getString("typed"),
                length,
                amount,
                row.getString("option"),
                row.getString("verdict"),
                row.getString("slip"));
    }
}
