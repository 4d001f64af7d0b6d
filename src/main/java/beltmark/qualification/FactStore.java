package beltmark.qualification;

import beltmark.core.qualification.Scope;
import java.time.LocalDate;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** The statements that write facts. When we knew is taken from the record. */
final class FactStore {

    private static final String ADD = """
            INSERT INTO qualification_fact (seq, number, kind, scope, person_id, scope_id, subject, by_person, of_seq,
                happened_on, known_at_ms)
            SELECT e.seq, 1 + (SELECT coalesce(max(number), 0) FROM qualification_fact WHERE seq = e.seq),
                :kind, :scope, :person, :scopeId, :subject, :by, :of, :on, e.recorded_at_ms
            FROM recordbook_entry e WHERE e.seq = :record""";

    private static final String ADD_CLEAN = """
            INSERT INTO qualification_fact (seq, number, kind, scope, person_id, subject, happened_on, known_at_ms, nth)
            SELECT e.seq, 1 + (SELECT coalesce(max(number), 0) FROM qualification_fact WHERE seq = e.seq),
                'clean', 'person', :person, :family, :on, e.recorded_at_ms, before.count + 1
            FROM recordbook_entry e, (SELECT count(*) AS count FROM qualification_fact
                WHERE person_id = :person AND nth IS NOT NULL AND subject = :family) before
            WHERE e.seq = :record AND before.count < :most""";

    private static final String ADD_ACTIVITY = """
            INSERT INTO qualification_activity (person_id, day, seq, known_at_ms, gap_days, late)
            SELECT :person, :on, e.seq, e.recorded_at_ms,
                coalesce(CAST(julianday(:on) - julianday((SELECT max(day) FROM qualification_activity
                    WHERE person_id = :person AND day < :on)) AS INTEGER), 0),
                EXISTS (SELECT 1 FROM qualification_activity WHERE person_id = :person AND day > :on)
            FROM recordbook_entry e
            WHERE e.seq = :record
                AND NOT EXISTS (SELECT 1 FROM qualification_activity WHERE person_id = :person AND day = :on)""";

    void add(Handle handle, long record, NewFact fact) {
        Scope scope = fact.scope();
        requireOne(
                record,
                handle.createUpdate(ADD)
                        .bind("record", record)
                        .bind("kind", fact.kind().id())
                        .bind("scope", scope.reach().id())
                        .bind("person", orNull(scope.person()))
                        .bind("scopeId", scope.id().isEmpty() ? null : scope.id())
                        .bind("subject", fact.subject())
                        .bind("by", orNull(fact.by()))
                        .bind("of", orNull(fact.of()))
                        .bind("on", fact.on().toString())
                        .execute());
    }

    void addClean(Handle handle, long record, long person, String family, LocalDate on, int most) {
        handle.createUpdate(ADD_CLEAN)
                .bind("record", record)
                .bind("person", person)
                .bind("family", family)
                .bind("on", on.toString())
                .bind("most", most)
                .execute();
    }

    void addActivity(Handle handle, long record, long person, LocalDate on) {
        handle.createUpdate(ADD_ACTIVITY)
                .bind("record", record)
                .bind("person", person)
                .bind("on", on.toString())
                .execute();
    }

    private static void requireOne(long record, int added) {
        if (added != 1) {
            throw new IllegalStateException("there is no record " + record + " to write a fact down with");
        }
    }

    private static @Nullable Long orNull(long number) {
        return number == 0 ? null : number;
    }
}
