package beltmark.lockout;

import beltmark.core.lockout.Switches;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** The statements behind the drawing of a paper: what the coordinator has set, and what each sitting drew. */
final class DrawStore {

    private static final String FIND_RULE_SETS = "SELECT rule_sets FROM bank_rules ORDER BY seq DESC LIMIT 1";

    private static final String LIST_SWITCHED_ON = """
            SELECT s.question
            FROM bank_switch s
            WHERE s.switch = :switch AND s.is_on = 1 AND NOT EXISTS (
                SELECT 1 FROM bank_switch n
                WHERE n.question = s.question AND n.switch = s.switch AND n.seq > s.seq)""";

    private static final String LIST_PROCEDURES = """
            SELECT v.seq
            FROM procedure_version v
            WHERE NOT EXISTS (
                SELECT 1 FROM procedure_version n WHERE n.procedure = v.procedure AND n.version > v.version)
            ORDER BY v.seq""";

    private static final String FIND_PROCEDURE =
            "SELECT seq FROM procedure_version WHERE procedure = :procedure AND version = :version";

    private static final String ADD_HOLDER = """
            INSERT INTO procedure_holder (procedure, version, person_id, result)
            VALUES (:procedure, :version, :person, :result)
            ON CONFLICT (procedure, version, person_id) DO UPDATE SET result = excluded.result""";

    private static final String COUNT_SITTINGS =
            "SELECT count(*) FROM lockout_sitting WHERE person_id = :person AND quiz = :quiz";

    private static final String FIND_DRAWN = "SELECT questions FROM lockout_drawn WHERE seq = :sitting";

    private static final String ADD_DRAWN = "INSERT INTO lockout_drawn (seq, questions) VALUES (:sitting, :questions)";

    /** {@return the rule sets the coordinator has chosen} */
    Optional<List<String>> findRuleSets(Handle handle) {
        return handle.createQuery(FIND_RULE_SETS).mapTo(String.class).findOne().map(Ids::split);
    }

    /** {@return what the coordinator has set for single questions} */
    Switches getSwitches(Handle handle) {
        return new Switches(
                handle.createQuery(LIST_SWITCHED_ON)
                        .bind("switch", "confirmed")
                        .mapTo(String.class)
                        .collect(Collectors.toUnmodifiableSet()),
                handle.createQuery(LIST_SWITCHED_ON)
                        .bind("switch", "retired")
                        .mapTo(String.class)
                        .collect(Collectors.toUnmodifiableSet()));
    }

    /** {@return the records of the latest version of every written procedure} */
    List<Long> listProcedures(Handle handle) {
        return handle.createQuery(LIST_PROCEDURES).mapTo(Long.class).list();
    }

    /** {@return the record of a version of a written procedure} */
    Optional<Long> findProcedure(Handle handle, String procedure, int version) {
        return handle.createQuery(FIND_PROCEDURE)
                .bind("procedure", procedure)
                .bind("version", version)
                .mapTo(Long.class)
                .findOne();
    }

    /** Notes that a person has passed a paper that asked about a version of a procedure. */
    void addHolder(Handle handle, String procedure, int version, long person, long result) {
        handle.createUpdate(ADD_HOLDER)
                .bind("procedure", procedure)
                .bind("version", version)
                .bind("person", person)
                .bind("result", result)
                .execute();
    }

    /** {@return how many sittings of a quiz that person has opened} */
    long countSittings(Handle handle, long person, String quiz) {
        return handle.createQuery(COUNT_SITTINGS)
                .bind("person", person)
                .bind("quiz", quiz)
                .mapTo(Long.class)
                .one();
    }

    /** {@return the ids of the questions a sitting drew; empty for a quiz with fixed questions} */
    Optional<List<String>> findDrawn(Handle handle, long sitting) {
        return handle.createQuery(FIND_DRAWN)
                .bind("sitting", sitting)
                .mapTo(String.class)
                .findOne()
                .map(Ids::split);
    }

    void addDrawn(Handle handle, long sitting, List<String> questions) {
        handle.createUpdate(ADD_DRAWN)
                .bind("sitting", sitting)
                .bind("questions", Ids.join(questions))
                .execute();
    }
}
