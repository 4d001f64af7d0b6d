package beltmark.db;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriterTest {

    @TempDir
    Path folder;

    private Database database;
    private final CountDownLatch free = new CountDownLatch(1);
    private CompletableFuture<Integer> held = CompletableFuture.completedFuture(0);

    @BeforeEach
    void open() {
        database = Database.open(folder);
        database.write(handle -> handle.execute("CREATE TABLE test_note (text TEXT UNIQUE)"))
                .join();
    }

    @AfterEach
    void close() {
        free.countDown();
        held.join();
        database.close();
    }

    private CompletableFuture<Integer> add(String text) {
        return database.write(handle -> insert(handle, text));
    }

    private static int insert(Handle handle, String text) {
        return handle.execute("INSERT INTO test_note (text) VALUES (?)", text);
    }

    private List<String> notes() {
        return database.read(handle -> handle.select("SELECT text FROM test_note ORDER BY rowid")
                .mapTo(String.class)
                .list());
    }

    /** Keeps the writer busy, so that what follows waits together and becomes one batch. */
    private void holdTheWriter() {
        CountDownLatch begun = new CountDownLatch(1);
        held = database.write(handle -> {
            begun.countDown();
            awaitQuietly(free);
            return 0;
        });
        awaitQuietly(begun);
    }

    private static void awaitQuietly(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Throwable faultOf(CompletableFuture<?> change) {
        return Objects.requireNonNull(
                assertThrows(CompletionException.class, change::join).getCause());
    }

    @Test
    void acknowledgedChangeIsSeenByReaders() {
        for (int number = 0; number < 50; number++) {
            add("note " + number).join();
            assertEquals(number + 1, notes().size());
        }
    }

    @Test
    void oneFailingChangeLeavesTheOthersOfItsBatch() {
        holdTheWriter();
        CompletableFuture<Integer> good = add("a");
        CompletableFuture<Integer> refusedByTheDatabase = add("a");
        CompletableFuture<Integer> thrown = database.write(handle -> {
            insert(handle, "half done");
            throw new IllegalStateException("no");
        });
        CompletableFuture<Integer> last = add("b");
        free.countDown();
        assertEquals(1, good.join());
        assertFalse(faultOf(refusedByTheDatabase) instanceof NotStored);
        assertEquals("no", faultOf(thrown).getMessage());
        assertEquals(1, last.join());
        assertEquals(List.of("a", "b"), notes());
    }

    @Test
    void wrongStatementFailsOnlyItself() {
        assertFalse(faultOf(database.write(handle -> handle.execute("SELEC 1"))) instanceof NotStored);
        assertEquals(1, add("a").join());
    }

    @Test
    void changeThatEndsTheTransactionIsNotAcknowledged() {
        holdTheWriter();
        CompletableFuture<Integer> before = add("a");
        CompletableFuture<Integer> meddler = database.write(handle -> handle.execute("ROLLBACK"));
        free.countDown();
        assertInstanceOf(NotStored.class, faultOf(before));
        assertInstanceOf(NotStored.class, faultOf(meddler));
        assertEquals(1, add("b").join());
        assertEquals(List.of("b"), notes());
    }

    @Test
    void fullDiskStoresNothingOfTheBatchAndTheNextOneGoesOn() {
        holdTheWriter();
        CompletableFuture<Integer> before = add("a");
        CompletableFuture<Integer> filling = database.write(handle -> {
            // SQLite's own limit gives the same fault as a full disk
            handle.execute("PRAGMA max_page_count = 1");
            return insert(handle, "x".repeat(100_000));
        });
        CompletableFuture<Integer> after = add("b");
        free.countDown();
        for (CompletableFuture<Integer> change : List.of(before, filling, after)) {
            assertInstanceOf(NotStored.class, faultOf(change));
        }
        assertTrue(database.fault().orElseThrow().contains("SQLITE_FULL"));
        assertEquals(List.of(), notes());
        assertEquals(1, add("c").join());
        assertEquals(Optional.empty(), database.fault());
        assertEquals(List.of("c"), notes());
    }

    @Test
    void tooManyWaitingAreRefusedAtOnce() {
        holdTheWriter();
        List<CompletableFuture<Integer>> waiting = IntStream.range(0, 4096)
                .mapToObj(number -> add("note " + number))
                .toList();
        CompletableFuture<Integer> tooMany = add("one too many");
        assertTrue(tooMany.isCompletedExceptionally());
        assertInstanceOf(NotStored.class, faultOf(tooMany));
        free.countDown();
        waiting.forEach(change -> assertEquals(1, change.join()));
        assertEquals(4096, notes().size());
    }

    @Test
    void closeStoresWhatWaits() {
        holdTheWriter();
        List<CompletableFuture<Integer>> waiting = new ArrayList<>();
        for (int number = 0; number < 200; number++) {
            waiting.add(add("note " + number));
        }
        CompletableFuture<Void> closing = CompletableFuture.runAsync(database::close);
        free.countDown();
        closing.join();
        waiting.forEach(change -> assertEquals(1, change.join()));
        assertEquals(200, Database.<Integer>inspect(folder, WriterTest::count));
    }

    private static int count(Handle handle) {
        return handle.select("SELECT count(*) FROM test_note").mapTo(int.class).one();
    }

    @Test
    void closedDatabaseRefusesAtOnce() {
        database.close();
        assertInstanceOf(NotStored.class, faultOf(add("late")));
    }

    @Test
    void whoeverHangsOnAChangeMayWaitForAnother() {
        List<CompletableFuture<Integer>> chains = IntStream.range(0, 100)
                .mapToObj(number -> add("first " + number)
                        .thenApply(done -> done + add("second " + number).join()))
                .toList();
        chains.forEach(chain -> assertEquals(2, chain.join()));
    }
}
