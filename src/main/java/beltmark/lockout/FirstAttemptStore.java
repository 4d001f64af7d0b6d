package beltmark.lockout;

import beltmark.core.lockout.Miss;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** The statements that keep the totals over first attempts, each for the crew and once more for all crews. */
final class FirstAttemptStore {

    private static final String COUNT_EARLIER =
            "SELECT count(*) FROM lockout_result WHERE person_id = :person AND quiz = :quiz";

    private static final String COUNT_SCORE = """
            INSERT INTO lockout_first_score (quiz, crew_id, month, asked, score, people, passed)
            SELECT :quiz, value, :month, :asked, :score, 1, :passed FROM json_each(json_array(0, :crew)) WHERE true
            ON CONFLICT DO UPDATE SET people = people + 1, passed = passed + excluded.passed""";

    private static final String COUNT_QUESTION = """
            INSERT INTO lockout_first_question (quiz, crew_id, month, question, asked, score, people, hits)
            SELECT :quiz, value, :month, :question, :asked, :score, 1, :hits
            FROM json_each(json_array(0, :crew)) WHERE true
            ON CONFLICT DO UPDATE SET people = people + 1, hits = hits + excluded.hits""";

    private static final String COUNT_MISS = """
            INSERT INTO lockout_first_miss (quiz, crew_id, month, question, kind, option, people)
            SELECT :quiz, value, :month, :question, :kind, :option, 1
            FROM json_each(json_array(0, :crew)) WHERE true
            ON CONFLICT DO UPDATE SET people = people + 1""";

    /** {@return whether that person has not finished a sitting of that quiz yet} */
    boolean isFirst(Handle handle, long person, String quiz) {
        return handle.createQuery(COUNT_EARLIER)
                        .bind("person", person)
                        .bind("quiz", quiz)
                        .mapTo(Long.class)
                        .one()
                == 0;
    }

    void countScore(Handle handle, FirstAttempt attempt, boolean passed) {
        handle.createUpdate(COUNT_SCORE)
                .bindMap(attempt.values())
                .bind("passed", passed)
                .execute();
    }

    void countQuestion(Handle handle, FirstAttempt attempt, String question, boolean right) {
        handle.createUpdate(COUNT_QUESTION)
                .bindMap(attempt.values())
                .bind("question", question)
                .bind("hits", right)
                .execute();
    }

    void countMiss(Handle handle, FirstAttempt attempt, String question, Miss miss) {
        handle.createUpdate(COUNT_MISS)
                .bindMap(attempt.values())
                .bind("question", question)
                .bind("kind", miss.kind().id())
                .bind("option", miss.option())
                .execute();
    }

    /**
     * What the totals of one sitting have in common.
     *
     * @param quiz the quiz
     * @param crew the crew of the person
     * @param month the month it was finished in
     * @param asked how many questions it had
     * @param score how many were right
     */
    record FirstAttempt(String quiz, long crew, String month, int asked, int score) {

        Map<String, Object> values() {
            return Map.of("quiz", quiz, "crew", crew, "month", month, "asked", asked, "score", score);
        }
    }
}
