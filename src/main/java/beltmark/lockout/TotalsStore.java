package beltmark.lockout;

import beltmark.core.lockout.Miss;
import beltmark.core.lockout.Quiz;
import org.jdbi.v3.core.Handle;

/** The statements that keep the totals of the lockout quiz in step with its records. */
final class TotalsStore {

    private static final String OPEN = """
            INSERT INTO lockout_standing (person_id, quiz, open_sitting) VALUES (:person, :quiz, :sitting)
            ON CONFLICT (person_id, quiz) DO UPDATE SET open_sitting = excluded.open_sitting""";

    private static final String CLOSE = """
            UPDATE lockout_standing
            SET open_sitting = NULL, last_result = :result, passed_result = iif(:passed, :result, passed_result)
            WHERE person_id = :person AND quiz = :quiz""";

    private static final String COUNT = """
            INSERT INTO lockout_count (quiz, version, crew_id, question, asked, missed)
            VALUES (:quiz, :version, :crew, :question, 1, :missed)
            ON CONFLICT (quiz, version, crew_id, question)
            DO UPDATE SET asked = asked + 1, missed = missed + excluded.missed""";

    private static final String COUNT_MISS = """
            INSERT INTO lockout_miss (quiz, version, crew_id, question, kind, option, times)
            VALUES (:quiz, :version, :crew, :question, :kind, :option, 1)
            ON CONFLICT (quiz, version, crew_id, question, kind, option) DO UPDATE SET times = times + 1""";

    private static final String COUNT_CRITICAL = """
            INSERT INTO lockout_critical (person_id, quiz, question, times, last_result)
            VALUES (:person, :quiz, :question, 1, :result)
            ON CONFLICT (person_id, quiz, question)
            DO UPDATE SET times = times + 1, last_result = excluded.last_result""";

    void open(Handle handle, SittingRow sitting) {
        handle.createUpdate(OPEN)
                .bind("person", sitting.personId())
                .bind("quiz", sitting.quiz())
                .bind("sitting", sitting.id())
                .execute();
    }

    void close(Handle handle, long person, SittingFinished result, long record) {
        handle.createUpdate(CLOSE)
                .bind("person", person)
                .bind("quiz", result.quiz())
                .bind("result", record)
                .bind("passed", result.passed())
                .execute();
    }

    void count(Handle handle, Quiz quiz, long crew, String question, boolean missed) {
        handle.createUpdate(COUNT)
                .bind("quiz", quiz.id())
                .bind("version", quiz.version())
                .bind("crew", crew)
                .bind("question", question)
                .bind("missed", missed)
                .execute();
    }

    void countMiss(Handle handle, Quiz quiz, long crew, String question, Miss miss) {
        handle.createUpdate(COUNT_MISS)
                .bind("quiz", quiz.id())
                .bind("version", quiz.version())
                .bind("crew", crew)
                .bind("question", question)
                .bind("kind", miss.kind().id())
                .bind("option", miss.option())
                .execute();
    }

    void countCritical(Handle handle, long person, String quiz, String question, long record) {
        handle.createUpdate(COUNT_CRITICAL)
                .bind("person", person)
                .bind("quiz", quiz)
                .bind("question", question)
                .bind("result", record)
                .execute();
    }
}
