package beltmark.db;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
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

    /** By version; the migrations of a running program do not change. */
    private static final Map<String, Map<String, String>> AS_MIGRATED = new ConcurrentHashMap<>();

    /**
     * A definition that is not as migrated.
     *
     * @param definition its type and name, as in {@code trigger recordbook_entry_no_update}
     * @param change what happened to it
     */
    public record Difference(String definition, Change change) {}

    /** What can have happened to a definition. */
    public enum Change {
        /** It is gone. */
        MISSING,
        /** No migration made it. */
        ADDED,
        /** Its text is another. */
        ALTERED
    }

    private Schema() {}

    /**
     * Compares all definitions.
     *
     * @return those that are missing, altered or not ours; empty when all are as migrated
     * @throws CannotOpen when the database is of a version that this program does not know
     */
    public static List<Difference> differences(Handle handle) {
        String version = handle.createQuery(GET_VERSION).mapTo(String.class).one();
        return differences(AS_MIGRATED.computeIfAbsent(version, Schema::definitionsAsMigrated), definitions(handle));
    }

    private static List<Difference> differences(Map<String, String> expected, Map<String, String> actual) {
        TreeSet<String> names = new TreeSet<>(expected.keySet());
        names.addAll(actual.keySet());
        List<Difference> differences = new ArrayList<>();
        for (String name : names) {
            String wanted = expected.get(name);
            String found = actual.get(name);
            if (found == null) {
                differences.add(new Difference(name, Change.MISSING));
            } else if (wanted == null) {
                differences.add(new Difference(name, Change.ADDED));
            } else if (!wanted.equals(found)) {
                differences.add(new Difference(name, Change.ALTERED));
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
