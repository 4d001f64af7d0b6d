package beltmark.db;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteDataSource;

/**
 * Compares the tables, indexes and triggers of a database with what its migrations make in an empty one: whoever can
 * write the file can drop the triggers that protect the records.
 */
public final class Schema {

    private static final String LIST_DEFINITIONS = "SELECT type || ' ' || name AS name, sql FROM sqlite_schema"
            + " WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'";
    private static final String GET_VERSION =
            "SELECT version FROM flyway_schema_history WHERE success ORDER BY installed_rank DESC LIMIT 1";

    private Schema() {}

    /** {@return one line for each definition that is missing, altered or not ours; empty when all are as migrated} */
    public static List<String> differences(Handle handle) {
        String version = handle.createQuery(GET_VERSION).mapTo(String.class).one();
        return differences(definitionsAsMigrated(version), definitions(handle));
    }

    private static List<String> differences(Map<String, String> expected, Map<String, String> actual) {
        TreeSet<String> names = new TreeSet<>(expected.keySet());
        names.addAll(actual.keySet());
        List<String> differences = new ArrayList<>();
        for (String name : names) {
            String wanted = expected.get(name);
            String found = actual.get(name);
            if (found == null) {
                differences.add(name + " is missing");
            } else if (wanted == null) {
                differences.add(name + " was added");
            } else if (!wanted.equals(found)) {
                differences.add(name + " was altered");
            }
        }
        return differences;
    }

    private static Map<String, String> definitionsAsMigrated(String version) {
        SQLiteDataSource memory = new SQLiteDataSource();
        memory.setUrl("jdbc:sqlite:file:" + UUID.randomUUID() + "?mode=memory&cache=shared");
        // the database lives as long as one connection to it
        try (Connection first = memory.getConnection()) {
            Migrations.runUpTo(version, memory);
            return definitions(Jdbi.open(first));
        } catch (SQLException e) {
            throw new IllegalStateException("no database in memory", e);
        }
    }

    private static Map<String, String> definitions(Handle handle) {
        Map<String, String> definitions = new TreeMap<>();
        handle
                .createQuery(LIST_DEFINITIONS)
                .map((row, context) -> Map.entry(row.getString(1), row.getString(2)))
                .stream()
                .forEach(entry -> definitions.put(entry.getKey(), entry.getValue()));
        return definitions;
    }
}
