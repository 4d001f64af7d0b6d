package beltmark.qualification;

import beltmark.core.qualification.Activity;
import beltmark.core.qualification.Fact;
import beltmark.core.qualification.FactKind;
import beltmark.core.qualification.Scope;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** The statements that read facts. People are handed over as one list, so that a whole board takes a handful of reads. */
final class FactReadStore {

    private static final String LIST_OWN = """
            SELECT f.person_id, f.seq, f.kind, f.scope, f.scope_id, f.subject, f.by_person, f.of_seq, f.happened_on,
                f.known_at_ms
            FROM json_each(:people) p CROSS JOIN qualification_fact f ON f.person_id = p.value
            WHERE f.nth IS NULL AND f.known_at_ms <= :known""";

    private static final String LIST_CLEAN = """
            SELECT f.person_id, f.seq, f.kind, f.scope, f.scope_id, f.subject, f.by_person, f.of_seq, f.happened_on,
                f.known_at_ms
            FROM json_each(:people) p CROSS JOIN qualification_fact f ON f.person_id = p.value
            WHERE f.nth <= :most AND f.known_at_ms <= :known""";

    private static final String LIST_FOR_MANY = """
            SELECT 0 AS person_id, f.seq, f.kind, f.scope, f.scope_id, f.subject, f.by_person, f.of_seq, f.happened_on,
                f.known_at_ms
            FROM qualification_fact f
            WHERE f.person_id IS NULL AND f.scope IN ('all', 'card', 'procedure') AND f.known_at_ms <= :known""";

    private static final String LIST_GAPS = """
            SELECT a.person_id, a.day, a.known_at_ms, a.gap_days
            FROM json_each(:people) p CROSS JOIN qualification_activity a ON a.person_id = p.value
            WHERE (a.gap_days >= 28 OR a.late = 1) AND a.known_at_ms <= :known""";

    private static final String LIST_LAST = """
            SELECT a.person_id, a.day, a.known_at_ms, a.gap_days
            FROM json_each(:people) p CROSS JOIN qualification_activity a ON a.person_id = p.value AND a.day = (
                SELECT day FROM qualification_activity
                WHERE person_id = p.value AND day <= :on AND known_at_ms <= :known
                ORDER BY day DESC LIMIT 1)""";

    private static final Map<String, FactKind> KINDS =
            Stream.of(FactKind.values()).collect(Collectors.toMap(FactKind::id, Function.identity()));
    private static final Map<String, Scope.Reach> REACHES =
            Stream.of(Scope.Reach.values()).collect(Collectors.toMap(Scope.Reach::id, Function.identity()));

    /** {@return the facts of each person, of clean problems the first of each family} */
    Map<Long, List<Fact>> mapOwn(Handle handle, Collection<Long> people, Instant asKnownAt, int mostClean) {
        Map<Long, List<Fact>> own = new HashMap<>();
        handle.createQuery(LIST_OWN)
                .bind("people", people.toString())
                .bind("known", asKnownAt)
                .map((row, context) -> addTo(own, row))
                .forEach(added -> {});
        handle.createQuery(LIST_CLEAN)
                .bind("people", people.toString())
                .bind("known", asKnownAt)
                .bind("most", mostClean)
                .map((row, context) -> addTo(own, row))
                .forEach(added -> {});
        return own;
    }

    /** {@return the facts that do not name a person} */
    List<Fact> listForMany(Handle handle, Instant asKnownAt) {
        return handle.createQuery(LIST_FOR_MANY)
                .bind("known", asKnownAt)
                .map((row, context) -> fact(row))
                .list();
    }

    /** {@return the days of each person after a long gap, those told late, and the last one up to a day} */
    Map<Long, List<Activity>> mapActivity(Handle handle, Collection<Long> people, LocalDate on, Instant asKnownAt) {
        Map<Long, List<Activity>> days = new HashMap<>();
        handle.createQuery(LIST_GAPS)
                .bind("people", people.toString())
                .bind("known", asKnownAt)
                .map((row, context) -> addActivity(days, row))
                .forEach(added -> {});
        handle.createQuery(LIST_LAST)
                .bind("people", people.toString())
                .bind("known", asKnownAt)
                .bind("on", on.toString())
                .map((row, context) -> addActivity(days, row))
                .forEach(added -> {});
        return days;
    }

    private static boolean addTo(Map<Long, List<Fact>> own, ResultSet row) throws SQLException {
        return own.computeIfAbsent(row.getLong("person_id"), person -> new ArrayList<>())
                .add(fact(row));
    }

    private static boolean addActivity(Map<Long, List<Activity>> days, ResultSet row) throws SQLException {
        return days.computeIfAbsent(row.getLong("person_id"), person -> new ArrayList<>())
                .add(new Activity(
                        LocalDate.parse(row.getString("day")),
                        Instant.ofEpochMilli(row.getLong("known_at_ms")),
                        row.getInt("gap_days")));
    }

    private static Fact fact(ResultSet row) throws SQLException {
        String id = row.getString("scope_id");
        Scope.Reach reach = REACHES.get(row.getString("scope"));
        FactKind kind = KINDS.get(row.getString("kind"));
        if (reach == null || kind == null) {
            throw new IllegalStateException("an unknown kind of fact in record " + row.getLong("seq"));
        }
        return new Fact(
                row.getLong("seq"),
                kind,
                new Scope(reach, row.getLong("person_id"), id == null ? "" : id),
                row.getString("subject"),
                row.getLong("by_person"),
                row.getLong("of_seq"),
                LocalDate.parse(row.getString("happened_on")),
                Instant.ofEpochMilli(row.getLong("known_at_ms")));
    }
}
