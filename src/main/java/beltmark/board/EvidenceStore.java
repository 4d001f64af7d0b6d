package beltmark.board;

import beltmark.board.Evidence.Entry;
import beltmark.board.Evidence.Figure;
import beltmark.board.Evidence.Title;
import beltmark.core.units.Length;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/** The records behind a cell of the board. Every statement gives one row per figure, in the order in which they are shown. */
final class EvidenceStore {

    /** How many problems, sittings or demonstrations are shown; the latest. */
    static final int MOST = 20;

    private static final String LIST_PRACTICE = """
            SELECT t.id AS thing, t.code AS what, t.card, t.clean AS good, 0 AS right_answers, 0 AS asked,
                e.seq, p.name AS actor, e.happened_at_ms, e.recorded_at_ms, lower(hex(substr(e.hash, 1, 6))) AS hash,
                a.part AS about, a.verdict,
                f.blank AS figure, coalesce(f.option, f.typed) AS typed, f.length_nm, NULL AS wanted_nm,
                f.slip
            FROM (SELECT id, code, card, clean, finished_at_ms FROM practice_attempt
                    WHERE person_id = :person AND family = :of AND finished_at_ms IS NOT NULL
                    ORDER BY finished_at_ms DESC LIMIT :most) t
                JOIN practice_answer a ON a.attempt_id = t.id
                JOIN recordbook_entry e ON e.seq = a.seq
                JOIN people_person p ON p.id = e.actor
                LEFT JOIN practice_figure f ON f.seq = a.seq
            ORDER BY t.finished_at_ms DESC, a.seq, f.blank""";

    private static final String LIST_QUIZ = """
            SELECT r.seq AS thing, '' AS what, '' AS card, r.passed AS good, r.right_answers, r.asked,
                e.seq, p.name AS actor, e.happened_at_ms, e.recorded_at_ms, lower(hex(substr(e.hash, 1, 6))) AS hash,
                json_extract(e.body, '$.ask') AS about, a.judgement AS verdict,
                '' AS figure,
                (SELECT group_concat(json_extract(o.value, '$.text'), ' / ')
                    FROM json_each(e.body, '$.chosen') c
                    JOIN json_each(e.body, '$.options') o ON json_extract(o.value, '$.id') = c.value) AS typed,
                NULL AS length_nm, NULL AS wanted_nm, NULL AS slip
            FROM (SELECT seq, sitting, passed, right_answers, asked FROM lockout_result
                    WHERE person_id = :person AND quiz = :of ORDER BY seq DESC LIMIT :most) r
                JOIN lockout_answer a ON a.sitting = r.sitting
                JOIN recordbook_entry e ON e.seq = a.seq
                JOIN people_person p ON p.id = e.actor
            ORDER BY r.seq DESC, a.seq""";

    private static final String LIST_DEMONSTRATIONS = """
            SELECT d.seq AS thing, d.conveyor AS what, d.card, 1 AS good, 0 AS right_answers, 0 AS asked,
                e.seq, p.name AS actor, e.happened_at_ms, e.recorded_at_ms, lower(hex(substr(e.hash, 1, 6))) AS hash,
                json_extract(e.body, '$.meaning') AS about, '' AS verdict,
                m.measure || '.' || m.side AS figure, m.typed, m.measured_nm AS length_nm, m.wanted_nm,
                NULL AS slip
            FROM (SELECT seq, conveyor, card, happened_on FROM signoff_demonstration
                    WHERE person_id = :person AND card = :of ORDER BY happened_on DESC, seq DESC LIMIT :most) d
                JOIN recordbook_entry e ON e.seq = d.seq
                JOIN people_person p ON p.id = e.actor
                JOIN signoff_measure m ON m.seq = d.seq
            ORDER BY d.happened_on DESC, d.seq DESC,
                instr('belt-mark mount-mark spring sleeve', m.measure), m.side""";

    List<Evidence> listPractice(Handle handle, long person, String family) {
        return list(handle.createQuery(LIST_PRACTICE), person, family);
    }

    List<Evidence> listQuiz(Handle handle, long person, String quiz) {
        return list(handle.createQuery(LIST_QUIZ), person, quiz);
    }

    List<Evidence> listDemonstrations(Handle handle, long person, String card) {
        return list(handle.createQuery(LIST_DEMONSTRATIONS), person, card);
    }

    private static List<Evidence> list(Query query, long person, String of) {
        Map<Long, Thing> things = new LinkedHashMap<>();
        query.bind("person", person)
                .bind("of", of)
                .bind("most", MOST)
                .map((row, context) -> addTo(things, row))
                .forEach(added -> {});
        return things.values().stream().map(Thing::toEvidence).toList();
    }

    private static long addTo(Map<Long, Thing> things, ResultSet row) throws SQLException {
        long id = row.getLong("thing");
        Thing thing = things.get(id);
        if (thing == null) {
            thing = new Thing(title(row), row.getBoolean("good"), new LinkedHashMap<>(), new LinkedHashMap<>());
            things.put(id, thing);
        }
        long number = row.getLong("seq");
        if (!thing.entries.containsKey(number)) {
            thing.entries.put(number, entry(row));
            thing.figures.put(number, new ArrayList<>());
        }
        if (row.getString("figure") != null) {
            thing.figures.getOrDefault(number, List.of()).add(figure(row));
        }
        return id;
    }

    /** Something that is put together row by row. */
    private record Thing(Title title, boolean good, Map<Long, Entry> entries, Map<Long, List<Figure>> figures) {

        Evidence toEvidence() {
            return new Evidence(
                    title,
                    good,
                    entries.values().stream()
                            .map(entry -> with(entry, figures.getOrDefault(entry.number(), List.of())))
                            .toList());
        }

        private static Entry with(Entry entry, List<Figure> figures) {
            return new Entry(
                    entry.number(),
                    entry.actor(),
                    entry.happenedAt(),
                    entry.recordedAt(),
                    entry.hash(),
                    entry.about(),
                    entry.verdict(),
                    figures);
        }
    }

    private static Title title(ResultSet row) throws SQLException {
        return new Title(
                row.getString("what"), row.getString("card"), row.getInt("right_answers"), row.getInt("asked"));
    }

    private static Entry entry(ResultSet row) throws SQLException {
        return new Entry(
                row.getLong("seq"),
                row.getString("actor"),
                Instant.ofEpochMilli(row.getLong("happened_at_ms")),
                Instant.ofEpochMilli(row.getLong("recorded_at_ms")),
                row.getString("hash"),
                row.getString("about"),
                row.getString("verdict"),
                List.of());
    }

    private static Figure figure(ResultSet row) throws SQLException {
        return new Figure(
                row.getString("figure"),
                row.getString("typed"),
                length(row, "length_nm"),
                length(row, "wanted_nm"),
                row.getString("slip"));
    }

    private static @Nullable Length length(ResultSet row, String column) throws SQLException {
        long nanometres = row.getLong(column);
        return row.wasNull() ? null : Length.ofNanometres(nanometres);
    }
}
