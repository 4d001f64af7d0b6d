package beltmark.bank;

import beltmark.core.lockout.Switches;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** The statements of the question bank. */
final class BankStore {

    private static final String FIND_RULE_SETS = "SELECT rule_sets FROM bank_rules ORDER BY seq DESC LIMIT 1";

    private static final String LIST_SWITCHED_ON = """
            SELECT s.question
            FROM bank_switch s
            WHERE s.switch = :switch AND s.is_on = 1 AND NOT EXISTS (
                SELECT 1 FROM bank_switch n
                WHERE n.question = s.question AND n.switch = s.switch AND n.seq > s.seq)""";

    private static final String LIST_SETTINGS = """
            SELECT s.seq, s.switch, s.is_on, p.name AS person, s.set_at_ms
            FROM bank_switch s JOIN people_person p ON p.id = s.person_id
            WHERE s.question = :question
            ORDER BY s.seq DESC""";

    private static final String ADD_SWITCH = """
            INSERT INTO bank_switch (seq, question, switch, is_on, person_id, set_at_ms)
            VALUES (:seq, :question, :switch, :on, :person, :at)""";

    private static final String ADD_RULES = """
            INSERT INTO bank_rules (seq, rule_sets, person_id, chosen_at_ms)
            VALUES (:seq, :ruleSets, :person, :at)""";

    Optional<List<String>> findRuleSets(Handle handle) {
        return handle.createQuery(FIND_RULE_SETS)
                .mapTo(String.class)
                .findOne()
                .map(sets -> Arrays.asList(sets.split(" ", -1)));
    }

    Switches getSwitches(Handle handle) {
        return new Switches(listOn(handle, Switch.CONFIRMED), listOn(handle, Switch.RETIRED));
    }

    private static Set<String> listOn(Handle handle, Switch which) {
        return handle.createQuery(LIST_SWITCHED_ON)
                .bind("switch", which.id())
                .mapTo(String.class)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** {@return what was set for a question, the last setting first} */
    List<SetAt> listSettings(Handle handle, String question) {
        return handle.createQuery(LIST_SETTINGS)
                .bind("question", question)
                .map((row, context) -> new SetAt(
                        row.getLong("seq"),
                        Switch.find(row.getString("switch")).orElseThrow(),
                        row.getBoolean("is_on"),
                        row.getString("person"),
                        Instant.ofEpochMilli(row.getLong("set_at_ms"))))
                .list();
    }

    void addSwitch(Handle handle, long record, String question, Switch which, boolean on, long person, Instant at) {
        handle.createUpdate(ADD_SWITCH)
                .bind("seq", record)
                .bind("question", question)
                .bind("switch", which.id())
                .bind("on", on)
                .bind("person", person)
                .bind("at", at)
                .execute();
    }

    void addRules(Handle handle, long record, List<String> ruleSets, long person, Instant at) {
        handle.createUpdate(ADD_RULES)
                .bind("seq", record)
                .bind("ruleSets", String.join(" ", ruleSets))
                .bind("person", person)
                .bind("at", at)
                .execute();
    }
}
