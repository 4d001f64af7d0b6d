package beltmark.review;

import beltmark.core.statistics.Proportion;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements of the review but those on first attempts. All but the export read totals or a few rows by key, however long the history is. */
final class ReviewStore {

    private static final String LIST_CREWS = "SELECT id, name FROM people_crew ORDER BY name";

    private static final String LIST_STANDINGS = """
            SELECT p.name AS person, c.name AS crew, t.open_sitting, l.sitting, l.right_answers, l.asked, l.passed,
                l.finished_at_ms, g.finished_at_ms AS passed_at_ms,
                (SELECT count(*) FROM lockout_critical k WHERE k.person_id = p.id AND k.quiz = :quiz) AS critical
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            LEFT JOIN lockout_standing t ON t.person_id = p.id AND t.quiz = :quiz
            LEFT JOIN lockout_result l ON l.seq = t.last_result
            LEFT JOIN lockout_result g ON g.seq = t.passed_result
            WHERE p.active = 1 AND :crew IN (0, p.crew_id)
            ORDER BY c.name, p.name, p.id
            LIMIT :most OFFSET :before""";

    private static final String COUNT_PASSED = """
            SELECT count(*) AS people, count(t.passed_result) AS passed
            FROM people_person p LEFT JOIN lockout_standing t ON t.person_id = p.id AND t.quiz = :quiz
            WHERE p.active = 1 AND :crew IN (0, p.crew_id)""";

    private static final String LIST_CRITICAL = """
            SELECT p.name AS person, c.name AS crew, k.question, k.times, r.sitting, r.finished_at_ms
            FROM lockout_critical k
            JOIN people_person p ON p.id = k.person_id
            JOIN people_crew c ON c.id = p.crew_id
            JOIN lockout_result r ON r.seq = k.last_result
            WHERE k.quiz = :quiz AND p.active = 1 AND :crew IN (0, p.crew_id)
            ORDER BY k.last_result DESC, k.question
            LIMIT :most""";

    private static final String FINISHED = """
            SELECT r.seq, r.sitting, r.quiz, r.person_id, p.name AS person, c.name AS crew, r.version, r.right_answers, r.asked,
                r.needed, r.passed, r.critical_misses, r.finished_at_ms
            FROM lockout_result r
            JOIN people_person p ON p.id = r.person_id
            JOIN people_crew c ON c.id = p.crew_id
            """;

    private static final String LIST_FINISHED =
            FINISHED + "WHERE r.quiz = :quiz AND :crew IN (0, p.crew_id) ORDER BY r.seq";

    private static final String FIND_FINISHED = FINISHED + "WHERE r.sitting = :sitting";

    private static final String LIST_OF_PERSON =
            FINISHED + "WHERE r.person_id = :person AND r.quiz = :quiz ORDER BY r.seq DESC LIMIT :most";

    private static final String LIST_ANSWERS = "SELECT seq FROM lockout_answer WHERE sitting = :sitting ORDER BY seq";

    List<CrewName> listCrews(Handle handle) {
        return handle.createQuery(LIST_CREWS)
                .map((row, context) -> new CrewName(row.getLong("id"), row.getString("name")))
                .list();
    }

    List<Standing> listStandings(Handle handle, Scope scope) {
        return scoped(handle, LIST_STANDINGS, scope)
                .bind("most", Scope.PEOPLE)
                .bind("before", (scope.page() - 1) * Scope.PEOPLE)
                .map(ReviewStore::toStanding)
                .list();
    }

    /** {@return how many people have passed of how many there are} */
    Proportion countPassed(Handle handle, Scope scope) {
        return scoped(handle, COUNT_PASSED, scope)
                .map((row, context) -> new Proportion(row.getLong("passed"), row.getLong("people")))
                .one();
    }

    List<CriticalMiss> listCritical(Handle handle, Scope scope, int most) {
        return scoped(handle, LIST_CRITICAL, scope)
                .bind("most", most)
                .map((row, context) -> new CriticalMiss(
                        row.getString("person"),
                        row.getString("crew"),
                        row.getString("question"),
                        row.getLong("times"),
                        row.getLong("sitting"),
                        instant(row, "finished_at_ms")))
                .list();
    }

    List<FinishedSitting> listFinished(Handle handle, Scope scope) {
        return scoped(handle, LIST_FINISHED, scope).map(ReviewStore::toFinished).list();
    }

    Optional<FinishedSitting> findFinished(Handle handle, long sitting) {
        return handle.createQuery(FIND_FINISHED)
                .bind("sitting", sitting)
                .map(ReviewStore::toFinished)
                .findOne();
    }

    List<FinishedSitting> listOfPerson(Handle handle, String quiz, long person, int most) {
        return handle.createQuery(LIST_OF_PERSON)
                .bind("quiz", quiz)
                .bind("person", person)
                .bind("most", most)
                .map(ReviewStore::toFinished)
                .list();
    }

    /** {@return the numbers of the records of the answers of a sitting} */
    List<Long> listAnswers(Handle handle, long sitting) {
        return handle.createQuery(LIST_ANSWERS)
                .bind("sitting", sitting)
                .mapTo(Long.class)
                .list();
    }

    private static Query scoped(Handle handle, String statement, Scope scope) {
        return handle.createQuery(statement).bind("quiz", scope.quiz()).bind("crew", scope.crew());
    }

    private static Standing toStanding(ResultSet row, StatementContext context) throws SQLException {
        boolean open = row.getLong("open_sitting") > 0;
        Instant passedAt = row.getLong("passed_at_ms") > 0 ? instant(row, "passed_at_ms") : null;
        Standing.Last last = row.getLong("sitting") > 0
                ? new Standing.Last(
                        row.getLong("sitting"),
                        row.getInt("right_answers"),
                        row.getInt("asked"),
                        row.getBoolean("passed"),
                        instant(row, "finished_at_ms"))
                : null;
        return new Standing(
                row.getString("person"), row.getString("crew"), open, last, passedAt, row.getInt("critical"));
    }

    private static FinishedSitting toFinished(ResultSet row, StatementContext context) throws SQLException {
        String missed = row.getString("critical_misses");
        return new FinishedSitting(
                row.getLong("seq"),
                row.getLong("sitting"),
                row.getString("quiz"),
                row.getLong("person_id"),
                row.getString("person"),
                row.getString("crew"),
                row.getInt("version"),
                row.getInt("right_answers"),
                row.getInt("asked"),
                row.getInt("needed"),
                row.getBoolean("passed"),
                missed.isEmpty() ? List.of() : Arrays.asList(missed.split(" ", -1)),
                instant(row, "finished_at_ms"));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return Instant.ofEpochMilli(row.getLong(column));
    }
}
