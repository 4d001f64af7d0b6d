package beltmark.db;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.units.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DatabaseTest {

    @TempDir
    Path temporary;

    private Path folder() {
        return temporary.resolve("records");
    }

    private static int add(Handle handle, String text) {
        return handle.execute("INSERT INTO test_note (text) VALUES (?)", text);
    }

    private static List<String> notes(Handle handle) {
        return handle.select("SELECT text FROM test_note ORDER BY rowid")
                .mapTo(String.class)
                .list();
    }

    private Database openWithNotes() {
        Database database = Database.open(folder());
        database.write(handle -> handle.execute("CREATE TABLE test_note (text TEXT)"))
                .join();
        return database;
    }

    @Test
    void folderAndFilesAreTheOwnersAlone() throws IOException {
        try (Database database = openWithNotes()) {
            assertEquals(List.of(), database.read(DatabaseTest::notes));
            assertEquals("rwx------", mode(folder()));
            for (String file : List.of("beltmark.db", "beltmark.db-wal", "beltmark.db-shm", "beltmark.lock")) {
                assertEquals("rw-------", mode(folder().resolve(file)), file);
            }
        }
    }

    private static String mode(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    @Test
    void closeLeavesOneFile() throws IOException {
        try (Database database = openWithNotes()) {
            database.read(DatabaseTest::notes);
            assertTrue(Files.size(folder().resolve("beltmark.db-wal")) > 0);
        }
        assertFalse(Files.exists(folder().resolve("beltmark.db-wal")));
        assertFalse(Files.exists(folder().resolve("beltmark.db-shm")));
    }

    @Test
    void inspectionLeavesNoFileEither() {
        openWithNotes().close();
        assertEquals(List.of(), Database.inspect(folder(), DatabaseTest::notes));
        assertFalse(Files.exists(folder().resolve("beltmark.db-wal")));
    }

    @Test
    void inspectionWorksBesideARunningServer() {
        try (Database database = openWithNotes()) {
            database.write(handle -> add(handle, "a")).join();
            assertEquals(List.of("a"), Database.inspect(folder(), DatabaseTest::notes));
            database.write(handle -> add(handle, "b")).join();
            assertEquals(List.of("a", "b"), database.read(DatabaseTest::notes));
        }
    }

    @Test
    void inspectionOfNothingIsRefused() {
        assertThrows(CannotOpen.class, () -> Database.inspect(folder(), DatabaseTest::notes));
    }

    @Test
    void secondServerOnTheSameFolderIsRefused() {
        try (Database first = openWithNotes()) {
            CannotOpen refused = assertThrows(CannotOpen.class, () -> Database.open(folder()));
            assertTrue(String.valueOf(refused.getMessage()).contains("in use by another Beltmark server"));
            assertEquals(List.of(), first.read(DatabaseTest::notes));
        }
        Database.open(folder()).close();
    }

    @Test
    void dataOfANewerProgramIsRefused() {
        try (Database database = Database.open(folder())) {
            database.write(handle -> handle.execute("""
                            INSERT INTO flyway_schema_history (installed_rank, version, description, type, script, checksum,
                                installed_by, execution_time, success)
                            VALUES (9999, '900', 'later', 'SQL', 'V900__later.sql', 1, '', 0, 1)""")).join();
        }
        assertThrows(CannotOpen.class, () -> Database.open(folder()));
        assertThrows(CannotOpen.class, () -> Database.inspect(folder(), Schema::differences));
    }

    @Test
    void everyReaderHasItsSettings() {
        int readers = Math.max(4, 2 * Runtime.getRuntime().availableProcessors());
        CyclicBarrier allOfThem = new CyclicBarrier(readers);
        ExecutorService threads = Executors.newFixedThreadPool(readers);
        try (Database database = Database.open(folder())) {
            List<CompletableFuture<Map<String, String>>> settings = new ArrayList<>();
            for (int reader = 0; reader < readers; reader++) {
                settings.add(CompletableFuture.supplyAsync(
                        () -> database.read(handle -> {
                            await(allOfThem);
                            return pragmas(handle, Pragmas.ofReader());
                        }),
                        threads));
            }
            settings.forEach(found -> assertEquals(Pragmas.ofReader(), found.join()));
        } finally {
            threads.shutdown();
        }
    }

    private static void await(CyclicBarrier barrier) {
        try {
            barrier.await();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void writerHasItsSettings() {
        try (Database database = Database.open(folder())) {
            Map<String, String> found = database.write(handle -> pragmas(handle, Pragmas.ofWriter()))
                    .join();
            assertEquals(Pragmas.ofWriter(), found);
        }
    }

    private static Map<String, String> pragmas(Handle handle, Map<String, String> names) {
        Map<String, String> found = new LinkedHashMap<>();
        for (String name : names.keySet()) {
            try {
                found.put(name, Pragmas.read(handle.getConnection(), name));
            } catch (SQLException e) {
                throw new IllegalStateException(e);
            }
        }
        return found;
    }

    @Test
    void readerCannotWrite() {
        try (Database database = openWithNotes()) {
            assertThrows(RuntimeException.class, () -> database.read(handle -> add(handle, "a")));
            assertThrows(
                    RuntimeException.class,
                    () -> database.read(handle -> handle.execute("PRAGMA query_only = 0") + add(handle, "a")));
            assertEquals(List.of(), database.read(DatabaseTest::notes));
        }
    }

    @Test
    void readSeesOneMoment() {
        try (Database database = openWithNotes()) {
            List<List<String>> seen = database.read(handle -> {
                List<String> before = notes(handle);
                database.write(writing -> add(writing, "a")).join();
                return List.of(before, notes(handle));
            });
            assertEquals(List.of(List.of(), List.of()), seen);
            assertEquals(List.of("a"), database.read(DatabaseTest::notes));
        }
    }

    @Test
    void lengthsAndTimesComeBackExactly() {
        Length length = Length.ofSixteenths(-77);
        Instant time = Instant.parse("2026-03-02T12:00:00.257Z");
        try (Database database = Database.open(folder())) {
            assertEquals(length, readBack(database, length, Length.class));
            assertEquals(time, readBack(database, time, Instant.class));
        }
    }

    private static <T> T readBack(Database database, T value, Class<T> type) {
        return database.read(handle -> handle.select("SELECT :value AS value WHERE typeof(:value) = 'integer'")
                .bind("value", value)
                .mapTo(type)
                .one());
    }
}
