package beltmark.db;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The settings every connection must have; SQLite's own are weaker. Each is set and then read back, because SQLite
 * answers an unknown or impossible setting with silence.
 */
final class Pragmas {

    private Pragmas() {}

    /** {@return name and value of each setting of a connection that writes} */
    static Map<String, String> ofWriter() {
        Map<String, String> settings = new LinkedHashMap<>();
        settings.put("busy_timeout", "5000");
        settings.put("journal_mode", "wal");
        // FULL: flushed at each commit. NORMAL would lose acknowledged records with the power.
        settings.put("synchronous", "2");
        settings.put("foreign_keys", "1");
        // without it REPLACE deletes rows unseen by their delete triggers
        settings.put("recursive_triggers", "1");
        settings.put("trusted_schema", "0");
        settings.put("cell_size_check", "1");
        // in memory: sorting must not leave records in a shared temporary folder
        settings.put("temp_store", "2");
        settings.put("journal_size_limit", "67108864");
        settings.put("query_only", "0");
        return settings;
    }

    /** {@return name and value of each setting of a connection that only reads} */
    static Map<String, String> ofReader() {
        Map<String, String> settings = ofWriter();
        settings.put("query_only", "1");
        return settings;
    }

    static void apply(Connection connection, Map<String, String> settings) throws SQLException {
        for (Map.Entry<String, String> setting : settings.entrySet()) {
            try (Statement statement = connection.createStatement()) {
                statement.execute("PRAGMA " + setting.getKey() + " = " + setting.getValue());
            }
        }
        requireAll(connection, settings);
    }

    static void requireAll(Connection connection, Map<String, String> settings) throws SQLException {
        for (Map.Entry<String, String> setting : settings.entrySet()) {
            String actual = read(connection, setting.getKey());
            if (!setting.getValue().equals(actual)) {
                throw new IllegalStateException(
                        "SQLite has " + setting.getKey() + " = " + actual + ", not " + setting.getValue());
            }
        }
    }

    static String read(Connection connection, String name) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA " + name)) {
            return row.next() ? row.getString(1) : "";
        }
    }
}
