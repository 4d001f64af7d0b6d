package beltmark.db;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseTest {

    @TempDir
    Path folder;

    @Test
    void closeLeavesOneFile() {
        try (Database database = Database.open(folder)) {
            database.write(handle -> handle.execute("CREATE TABLE test_note (text TEXT)"))
                    .join();
            assertTrue(Files.exists(folder.resolve("beltmark.db-wal")));
        }
        assertFalse(Files.exists(folder.resolve("beltmark.db-wal")));
        assertFalse(Files.exists(folder.resolve("beltmark.db-shm")));
    }

    @Test
    void secondServerOnTheSameFolderIsRefused() {
        try (Database first = Database.open(folder)) {
            CannotOpen refused = assertThrows(CannotOpen.class, () -> Database.open(folder));
            assertTrue(String.valueOf(refused.getMessage()).contains("in use by another Beltmark server"));
            assertEquals(
                    1,
                    first.<Integer>read(handle ->
                            handle.select("SELECT 1").mapTo(Integer.class).one()));
        }
        Database.open(folder).close();
    }
}
