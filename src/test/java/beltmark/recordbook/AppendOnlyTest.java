package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import beltmark.db.Database;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every form of statement that could change a record is refused, also on a connection with SQLite's own settings. */
class AppendOnlyTest {

    private static final String ALL = "SELECT quote(seq) || kind || operation || subject || actor || happened_at_ms"
            + " || recorded_at_ms || body || quote(previous_hash) || quote(hash) FROM recordbook_entry ORDER BY seq";

    @TempDir
    Path folder;

    private List<String> before = List.of();

    @BeforeEach
    void write() throws SQLException {
        SampleBook.write(folder, 3);
        before = records();
        assertEquals(3, before.size());
    }

    private List<String> records() throws SQLException {
        try (Connection connection = SampleBook.connect(folder);
                Statement statement = connection.createStatement()) {
            return SampleBook.column(statement, ALL);
        }
    }

    /** A row that would follow the third one, but for what is given. */
    private static String row(String verb, String seq, String operation, String previous, String hash, String time) {
        return verb + " INTO recordbook_entry SELECT " + seq
                + ", 1, 'practice.answer', " + operation + ", 1, 1, 0, recorded_at_ms" + time + ", '{}', " + previous
                + ", " + hash + " FROM recordbook_entry WHERE seq = 3";
    }

    private static String row(String verb, String seq, String operation, String hash) {
        return row(verb, seq, operation, "hash", hash, "");
    }

    static Stream<String> updatesAndDeletes() {
        return Stream.of(
                "UPDATE recordbook_entry SET body = '{}' WHERE seq = 2",
                "UPDATE recordbook_entry SET body = body",
                "UPDATE recordbook_entry SET seq = 9 WHERE seq = 3",
                "UPDATE OR IGNORE recordbook_entry SET body = '{}'",
                "UPDATE OR REPLACE recordbook_entry SET operation = 'operation-1' WHERE seq = 2",
                "UPDATE OR ROLLBACK recordbook_entry SET body = '{}'",
                "UPDATE OR FAIL recordbook_entry SET body = '{}'",
                "UPDATE recordbook_entry SET body = x.body FROM (SELECT '{}' AS body) AS x",
                "WITH x AS (SELECT 2 AS seq) UPDATE recordbook_entry SET body = '{}' WHERE seq IN (SELECT seq FROM x)",
                "DELETE FROM recordbook_entry WHERE seq = 3",
                "DELETE FROM recordbook_entry",
                "DELETE FROM recordbook_entry WHERE seq = 2 RETURNING body");
    }

    static Stream<String> clashes() {
        return Stream.of(
                        "INSERT",
                        "INSERT OR REPLACE",
                        "REPLACE",
                        "INSERT OR IGNORE",
                        "INSERT OR FAIL",
                        "INSERT OR ROLLBACK")
                .flatMap(verb -> Stream.of(
                        row(verb, "1", "'new'", "randomblob(32)"),
                        row(verb, "3", "'new'", "randomblob(32)"),
                        row(verb, "4", "'operation-1'", "randomblob(32)"),
                        row(verb, "4", "'new'", "hash")));
    }

    static Stream<String> upserts() {
        String numberTaken = row("INSERT", "2", "'new'", "randomblob(32)");
        String operationTaken = row("INSERT", "4", "'operation-2'", "randomblob(32)");
        return Stream.of(
                numberTaken + " ON CONFLICT (seq) DO UPDATE SET body = excluded.body",
                numberTaken + " ON CONFLICT DO NOTHING",
                operationTaken + " ON CONFLICT (operation) DO UPDATE SET body = excluded.body",
                operationTaken + " ON CONFLICT (operation) DO UPDATE SET seq = 99");
    }

    static Stream<String> rowsThatDoNotFollow() {
        return Stream.of(
                row("INSERT", "5", "'new'", "randomblob(32)"),
                row("INSERT", "NULL", "'new'", "randomblob(32)"),
                row("INSERT", "0", "'new'", "randomblob(32)"),
                row("INSERT", "-1", "'new'", "randomblob(32)"),
                row("INSERT", "4", "'new'", "zeroblob(32)", "randomblob(32)", ""),
                row("INSERT", "4", "'new'", "NULL", "randomblob(32)", ""),
                row("INSERT", "4", "'new'", "hash", "randomblob(31)", ""),
                row("INSERT", "4", "'new'", "hash", "randomblob(32)", " - 1"),
                row("INSERT", "4", "NULL", "randomblob(32)"),
                row("INSERT", "4", "''", "randomblob(32)"));
    }

    static Stream<String> refused() {
        return Stream.of(updatesAndDeletes(), clashes(), upserts(), rowsThatDoNotFollow())
                .flatMap(forms -> forms);
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefusedWithTheSettingsOfSqlite(String form) throws SQLException {
        try (Connection connection = SampleBook.connect(folder);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA recursive_triggers = OFF");
            assertThrows(SQLException.class, () -> statement.execute(form));
        }
        assertEquals(before, records());
    }

    @Test
    void isRefusedToTheWriter() throws SQLException {
        try (Database database = Database.open(folder)) {
            for (String form : refused().toList()) {
                assertThrows(
                        CompletionException.class,
                        () -> database.write(handle -> handle.execute(form)).join(),
                        form);
            }
        }
        assertEquals(before, records());
    }

    @Test
    void theRowAllThoseDepartFromIsAccepted() throws SQLException {
        try (Connection connection = SampleBook.connect(folder);
                Statement statement = connection.createStatement()) {
            assertEquals(1, statement.executeUpdate(row("INSERT", "4", "'new'", "randomblob(32)")));
        }
    }
}
