package beltmark.lockout;

import beltmark.core.lockout.Judgement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements of the lockout quiz on its records; those on its totals are in {@link TotalsStore}. */
final class LockoutStore {

    private static final String FIND_SITTING =
            "SELECT seq, person_id, quiz, version, seed FROM lockout_sitting WHERE seq = :sitting";

    private static final String LIST_ANSWERS = """
            SELECT a.question, a.chosen, a.judgement, e.operation
            FROM lockout_answer a JOIN recordbook_entry e ON e.seq = a.seq
            WHERE a.sitting = :sitting
            ORDER BY a.seq""";

    private static final String FIND_OPEN = """
            SELECT s.seq
            FROM lockout_standing t JOIN lockout_sitting s ON s.seq = t.open_sitting
            WHERE t.person_id = :person AND t.quiz = :quiz AND s.version = :version""";

    private static final String LIST_RESULTS = """
            SELECT sitting, quiz, version, right_answers, asked, passed, finished_at_ms
            FROM lockout_result
            WHERE person_id = :person
            ORDER BY seq DESC
            LIMIT :most""";

    private static final String ADD_SITTING = """
            INSERT INTO lockout_sitting (seq, person_id, quiz, version, seed, started_at_ms)
            VALUES (:seq, :person, :quiz, :version, :seed, :at)""";

    private static final String ADD_ANSWER = """
            INSERT INTO lockout_answer (seq, sitting, question, chosen, judgement, answered_at_ms)
            VALUES (:seq, :sitting, :question, :chosen, :judgement, :at)""";

    private static final String ADD_RESULT = """
            INSERT INTO lockout_result (seq, sitting, person_id, crew_id, quiz, version, right_answers, asked, needed,
                critical_misses, passed, finished_at_ms)
            VALUES (:seq, :sitting, :person, :crew, :quiz, :version, :right, :asked, :needed,
                :criticalMisses, :passed, :at)""";

    Optional<SittingRow> findSitting(Handle handle, long sitting) {
        return handle.createQuery(FIND_SITTING)
                .bind("sitting", sitting)
                .map((row, context) -> new SittingRow(
                        row.getLong("seq"),
                        row.getLong("person_id"),
                        row.getString("quiz"),
                        row.getInt("version"),
                        row.getLong("seed")))
                .findOne();
    }

    List<GivenAnswer> listAnswers(Handle handle, long sitting) {
        return handle.createQuery(LIST_ANSWERS)
                .bind("sitting", sitting)
                .map(LockoutStore::toAnswer)
                .list();
    }

    private static GivenAnswer toAnswer(ResultSet row, StatementContext context) throws SQLException {
        return new GivenAnswer(
                row.getString("question"),
                Ids.split(row.getString("chosen")),
                row.getString("judgement").equals(Judgement.RIGHT.id()) ? Judgement.RIGHT : Judgement.WRONG,
                row.getString("operation"));
    }

    /** {@return the sitting of that version that waits to be finished} */
    OptionalLong findOpen(Handle handle, long person, String quiz, int version) {
        return handle
                .createQuery(FIND_OPEN)
                .bind("person", person)
                .bind("quiz", quiz)
                .bind("version", version)
                .mapTo(Long.class)
                .stream()
                .mapToLong(Long::longValue)
                .findFirst();
    }

    /** {@return the latest results of a person, the last one first} */
    List<PastResult> listResults(Handle handle, long person, int most) {
        return handle.createQuery(LIST_RESULTS)
                .bind("person", person)
                .bind("most", most)
                .map((row, context) -> new PastResult(
                        row.getLong("sitting"),
                        row.getString("quiz"),
                        row.getInt("version"),
                        row.getInt("right_answers"),
                        row.getInt("asked"),
                        row.getBoolean("passed"),
                        Instant.ofEpochMilli(row.getLong("finished_at_ms"))))
                .list();
    }

    void addSitting(Handle handle, SittingRow sitting, Instant at) {
        handle.createUpdate(ADD_SITTING)
                .bind("seq", sitting.id())
                .bind("person", sitting.personId())
                .bind("quiz", sitting.quiz())
                .bind("version", sitting.version())
                .bind("seed", sitting.seed())
                .bind("at", at)
                .execute();
    }

    void addAnswer(Handle handle, long record, AnswerGiven answer, Instant at) {
        handle.createUpdate(ADD_ANSWER)
                .bind("seq", record)
                .bind("sitting", answer.sitting())
                .bind("question", answer.question())
                .bind("chosen", Ids.join(answer.chosen()))
                .bind("judgement", answer.judgement())
                .bind("at", at)
                .execute();
    }

    void addResult(Handle handle, long record, SittingFinished result, Sitter sitter, Instant at) {
        handle.createUpdate(ADD_RESULT)
                .bind("seq", record)
                .bind("sitting", result.sitting())
                .bind("person", sitter.personId())
                .bind("crew", sitter.crewId())
                .bind("quiz", result.quiz())
                .bind("version", result.version())
                .bind("right", result.right())
                .bind("asked", result.asked())
                .bind("needed", result.needed())
                .bind("criticalMisses", Ids.join(result.criticalMisses()))
                .bind("passed", result.passed())
                .bind("at", at)
                .execute();
    }
}
