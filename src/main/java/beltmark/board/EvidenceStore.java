package beltmark.board;

import beltmark.board.Evidence.Entry;
import beltmark.board.Evidence.Figure;
import beltmark.board.Evidence.Title;
import beltmark.core.units.Length;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
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
                    WHERE person_id = :person AND family = :of AND finished_at_ms <= :upTo
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
                    WHERE person_id = :person AND quiz = :of AND finished_at_ms <= :upTo
                    ORDER BY seq DESC LIMIT :most) r
                JOIN lockout_answer a ON a.sitting = r.sitting
                JOIN recordbook_entry e ON e.seq = a.seq
                JOIN people_person p ON p.id = e.actor
            ORDER BY r.seq DESC, a.seq""";

    private static final String LIST_DEMONSTRATIONS = """
            WITH shown AS (
                SELECT d.seq, d.conveyor, d.card, d.happened_on, d.good
                FROM (SELECT seq, conveyor, card, happened_on, 1 AS good FROM signoff_demonstration
                        WHERE person_id = :person AND card = :of AND happened_on <= :on
                    UNION ALL
                    SELECT seq, conveyor, card, happened_on, 0 FROM signoff_not_passed
                        WHERE person_id = :person AND card = :of AND happened_on <= :on) d
                WHERE (SELECT recorded_at_ms FROM recordbook_entry WHERE seq = d.seq) <= :known
                ORDER BY d.happened_on DESC, d.seq DESC LIMIT :most),
            figure AS (
                SELECT seq, NULL AS figure, NULL AS typed, NULL AS length_nm, NULL AS wanted_nm, 0 AS place FROM shown
                UNION ALL
                SELECT s.seq, 'flag.' || f.flag, '', NULL, NULL, 1 FROM shown s JOIN signoff_flag f ON f.seq = s.seq
                UNION ALL
                SELECT s.seq, 'missed.' || json_extract(x.value, '$.observation'), json_extract(x.value, '$.answer'),
                    NULL, NULL, 2
                FROM shown s JOIN recordbook_entry b ON b.seq = s.seq JOIN json_each(b.body, '$.seen') x
                WHERE json_extract(x.value, '$.critical') = 1 AND json_extract(x.value, '$.answer') <> 'yes'
                UNION ALL
                SELECT s.seq, 'explained.' || x.key, x.value, NULL, NULL, 3
                FROM shown s JOIN recordbook_entry b ON b.seq = s.seq JOIN json_each(b.body, '$.explanations') x
                UNION ALL
                SELECT s.seq, m.measure || '.' || m.side, m.typed, m.measured_nm, m.wanted_nm,
                    4 + instr('belt-mark mount-mark spring sleeve', m.measure)
                FROM shown s JOIN signoff_measure m ON m.seq = s.seq)
            SELECT s.seq AS thing, s.conveyor AS what, s.card, s.good, 0 AS right_answers, 0 AS asked,
                e.seq, p.name AS actor, e.happened_at_ms, e.recorded_at_ms, lower(hex(substr(e.hash, 1, 6))) AS hash,
                json_extract(e.body, '$.meaning') AS about, '' AS verdict,
                g.figure, g.typed, g.length_nm, g.wanted_nm, NULL AS slip
            FROM shown s
                JOIN recordbook_entry e ON e.seq = s.seq
                JOIN people_person p ON p.id = e.actor
                JOIN figure g ON g.seq = s.seq
            ORDER BY s.happened_on DESC, s.seq DESC, g.place, g.figure""";

    private static final String LIST_PAPERS = """
            SELECT f.seq AS thing, f.subject AS what, '' AS card, 1 AS good, 0 AS right_answers, 0 AS asked,
                e.seq, p.name AS actor, e.happened_at_ms, e.recorded_at_ms, lower(hex(substr(e.hash, 1, 6))) AS hash,
                '' AS about, '' AS verdict, NULL AS figure, NULL AS typed, NULL AS length_nm, NULL AS wanted_nm,
                NULL AS slip
            FROM qualification_fact f
                JOIN recordbook_entry e ON e.seq = f.seq
                JOIN people_person p ON p.id = e.actor
            WHERE f.person_id = :person AND f.nth IS NULL AND f.kind = 'paper-passed' AND f.subject = :of
                AND f.happened_on <= :on AND f.known_at_ms <= :known
            ORDER BY f.happened_on DESC, f.seq DESC LIMIT :most""";

    private static final String LIST_ORDERS = """
            SELECT f.seq * 100 + f.number AS thing, iif(f.kind = 'event', f.subject, f.kind) AS what, '' AS card,
                f.kind = 'release' AS good, 0 AS right_answers, 0 AS asked,
                e.seq, p.name AS actor, e.happened_at_ms, e.recorded_at_ms, lower(hex(substr(e.hash, 1, 6))) AS hash,
                coalesce(json_extract(e.body, '$.reason'), '') AS about, '' AS verdict,
                NULL AS figure, NULL AS typed, NULL AS length_nm, NULL AS wanted_nm, NULL AS slip
            FROM (
                    SELECT seq, number, kind, subject, happened_on, known_at_ms FROM qualification_fact
                    WHERE person_id = :person AND nth IS NULL
                    UNION ALL
                    SELECT seq, number, kind, subject, happened_on, known_at_ms FROM qualification_fact
                    WHERE person_id IS NULL AND scope IN ('all', 'card', 'procedure')
                        AND (scope = 'all' OR scope_id = :card
                            OR scope_id IN (SELECT value FROM json_each(:procedures)))) f
                JOIN recordbook_entry e ON e.seq = f.seq
                JOIN people_person p ON p.id = e.actor
            WHERE f.kind IN ('hold', 'event', 'release', 'withdrawal')
                AND f.happened_on <= :on AND f.known_at_ms <= :known
            ORDER BY f.happened_on DESC, f.seq DESC LIMIT :most""";

    /**
     * What is asked for.
     *
     * @param person whose records
     * @param of the id of the family, quiz, paper, card or qualification
     * @param on the last day that counts
     * @param upTo its end
     * @param known the last moment at which it must have been known
     */
    record Asked(long person, String of, LocalDate on, Instant upTo, Instant known) {}

    List<Evidence> listPractice(Handle handle, Asked asked) {
        return list(handle.createQuery(LIST_PRACTICE).bind("of", asked.of()).bind("upTo", asked.upTo()), asked);
    }

    List<Evidence> listQuiz(Handle handle, Asked asked) {
        return list(handle.createQuery(LIST_QUIZ).bind("of", asked.of()).bind("upTo", asked.upTo()), asked);
    }

    List<Evidence> listPapers(Handle handle, Asked asked) {
        return list(dated(handle.createQuery(LIST_PAPERS).bind("of", asked.of()), asked), asked);
    }

    List<Evidence> listDemonstrations(Handle handle, Asked asked) {
        return list(dated(handle.createQuery(LIST_DEMONSTRATIONS).bind("of", asked.of()), asked), asked);
    }

    /** {@return the orders and events that concern a person by a rule with that card and those procedures} */
    List<Evidence> listOrders(Handle handle, Asked asked, String card, List<String> procedures) {
        Query query = dated(handle.createQuery(LIST_ORDERS), asked)
                .bind("card", card)
                .bind("procedures", procedures.isEmpty() ? "[]" : "[\"" + String.join("\",\"", procedures) + "\"]");
        return list(query, asked);
    }

    private static Query dated(Query query, Asked asked) {
        return query.bind("on", asked.on().toString()).bind("known", asked.known());
    }

    private static List<Evidence> list(Query query, Asked asked) {
        Map<Long, Thing> things = new LinkedHashMap<>();
        query.bind("person", asked.person())
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
