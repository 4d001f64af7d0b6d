package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.db.Database;
import java.nio.file.Path;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every table that spells out records by column carries the triggers of the pattern in V001. */
class RecordTablesTest {

    private static final String LIST_RECORD_TABLES = """
            SELECT t.name FROM sqlite_schema AS t, pragma_table_info(t.name) AS c, pragma_foreign_key_list(t.name) AS f
            WHERE t.type = 'table' AND c.pk = 1 AND f."from" = c.name AND f."table" = 'recordbook_entry'
            ORDER BY t.name""";

    private static final String COUNT_TRIGGERS = """
            SELECT count(*) FROM sqlite_schema WHERE type = 'trigger' AND tbl_name = :table
            AND (sql LIKE '%BEFORE INSERT ON ' || :table || '%RAISE(ABORT%'
              OR sql LIKE '%BEFORE UPDATE ON ' || :table || '%RAISE(ABORT%'
              OR sql LIKE '%BEFORE DELETE ON ' || :table || '%RAISE(ABORT%')""";

    @TempDir
    Path folder;

    @Test
    void everyTableOfRecordsRefusesChanges() {
        try (Database database = Database.open(folder)) {
            assertEquals(List.of(), database.read(RecordTablesTest::tablesWithoutTheirTriggers));
        }
    }

    @Test
    void patternIsFoundByThisTest() {
        try (Database database = Database.open(folder)) {
            database.write(
                            handle -> handle.execute(
                                    "CREATE TABLE test_answer (seq INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq)) STRICT"))
                    .join();
            assertEquals(List.of("test_answer"), database.read(RecordTablesTest::tablesWithoutTheirTriggers));
        }
    }

    private static List<String> tablesWithoutTheirTriggers(Handle handle) {
        return handle.createQuery(LIST_RECORD_TABLES).mapTo(String.class).list().stream()
                .filter(table -> countTriggers(handle, table) < 3)
                .toList();
    }

    private static int countTriggers(Handle handle, String table) {
        return handle.createQuery(COUNT_TRIGGERS)
                .bind("table", table)
                .mapTo(int.class)
                .one();
    }
}
