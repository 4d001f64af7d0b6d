package beltmark.review.first;

import beltmark.core.statistics.Proportion;
import beltmark.review.first.FirstAttempts.MissCount;
import beltmark.review.first.FirstAttempts.QuestionCount;
import beltmark.review.first.FirstAttempts.ScoreCount;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.generic.GenericType;
import org.jdbi.v3.core.statement.Query;

/** The statements that read the totals over first attempts. */
final class FirstTotalsStore {

    private static final String LIST_MONTHS =
            "SELECT DISTINCT month FROM lockout_first_score WHERE quiz = :quiz AND crew_id = 0 ORDER BY month";

    private static final String LIST_SCORES = """
            SELECT asked, score, sum(people) AS people, sum(passed) AS passed
            FROM lockout_first_score
            WHERE quiz = :quiz AND crew_id = :crew AND month BETWEEN :from AND :to
            GROUP BY asked, score""";

    private static final String LIST_QUESTIONS = """
            SELECT question, asked, score, sum(people) AS people, sum(hits) AS hits
            FROM lockout_first_question
            WHERE quiz = :quiz AND crew_id = :crew AND month BETWEEN :from AND :to
            GROUP BY question, asked, score""";

    private static final String LIST_MISSES = """
            SELECT question, kind, option, sum(people) AS people
            FROM lockout_first_miss
            WHERE quiz = :quiz AND crew_id = :crew AND month BETWEEN :from AND :to
            GROUP BY question, kind, option
            ORDER BY question, people DESC, kind, option""";

    private static final String LIST_CREW_SIZES = """
            SELECT crew_id, sum(people) AS people
            FROM lockout_first_score
            WHERE quiz = :quiz AND crew_id > 0 AND month BETWEEN :from AND :to
            GROUP BY crew_id""";

    private static final String LIST_EVERYWHERE = """
            SELECT question, sum(people) AS people
            FROM lockout_first_question
            WHERE quiz = :quiz AND crew_id = 0 AND month BETWEEN :from AND :to
            GROUP BY question""";

    List<String> listMonths(Handle handle, String quiz) {
        return handle.createQuery(LIST_MONTHS)
                .bind("quiz", quiz)
                .mapTo(String.class)
                .list();
    }

    List<ScoreCount> listScores(Handle handle, String quiz, long crew, Period period) {
        return of(handle, LIST_SCORES, quiz, period)
                .bind("crew", crew)
                .map((row, context) -> new ScoreCount(
                        row.getInt("asked"), row.getInt("score"), row.getLong("people"), row.getLong("passed")))
                .list();
    }

    List<QuestionCount> listQuestions(Handle handle, String quiz, long crew, Period period) {
        return of(handle, LIST_QUESTIONS, quiz, period)
                .bind("crew", crew)
                .map((row, context) -> new QuestionCount(
                        row.getString("question"),
                        row.getInt("asked"),
                        row.getInt("score"),
                        new Proportion(row.getLong("hits"), row.getLong("people"))))
                .list();
    }

    List<MissCount> listMisses(Handle handle, String quiz, long crew, Period period) {
        return of(handle, LIST_MISSES, quiz, period)
                .bind("crew", crew)
                .map((row, context) -> new MissCount(
                        row.getString("question"),
                        row.getString("kind"),
                        row.getString("option"),
                        row.getLong("people")))
                .list();
    }

    Map<Long, Long> listCrewSizes(Handle handle, String quiz, Period period) {
        return of(handle, LIST_CREW_SIZES, quiz, period)
                .setMapKeyColumn("crew_id")
                .setMapValueColumn("people")
                .collectInto(new GenericType<>() {});
    }

    Map<String, Long> listEverywhere(Handle handle, String quiz, Period period) {
        return of(handle, LIST_EVERYWHERE, quiz, period)
                .setMapKeyColumn("question")
                .setMapValueColumn("people")
                .collectInto(new GenericType<>() {});
    }

    private static Query of(Handle handle, String statement, String quiz, Period period) {
        return handle.createQuery(statement)
                .bind("quiz", quiz)
                .bind("from", period.earliest())
                .bind("to", period.latest());
    }
}
