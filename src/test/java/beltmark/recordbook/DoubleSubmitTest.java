package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.db.Database;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DoubleSubmitTest {

    private static final int THREADS = 8;
    private static final int OPERATIONS = 250;

    @TempDir
    Path folder;

    private final Map<Integer, Collection<Recorded>> answers = new ConcurrentHashMap<>();

    @Test
    void operationSentByEightThreadsIsOneRecordWithOneAnswer() {
        try (Database database = Database.open(folder)) {
            sendEverythingFromEachThread(database);
            answers.values().forEach(DoubleSubmitTest::requireOneNewAndTheSameNumber);
            assertEquals(OPERATIONS, answers.size());
            Verification verification = database.read(SampleBook.BOOK::verify);
            assertTrue(verification.isUnchanged());
            assertEquals(OPERATIONS, verification.head().sequence());
        }
    }

    private void sendEverythingFromEachThread(Database database) {
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<CompletableFuture<Void>> runs = IntStream.range(0, THREADS)
                    .mapToObj(thread -> CompletableFuture.runAsync(() -> sendAll(database, thread), threads))
                    .toList();
            runs.forEach(CompletableFuture::join);
        } finally {
            threads.shutdown();
        }
    }

    private void sendAll(Database database, int thread) {
        for (int number = 0; number < OPERATIONS; number++) {
            int operation = thread % 2 == 0 ? number : OPERATIONS - 1 - number;
            Recorded recorded = database.write(handle -> SampleBook.BOOK.append(handle, SampleBook.entry(operation)))
                    .join();
            answers.computeIfAbsent(operation, first -> new ConcurrentLinkedQueue<>())
                    .add(recorded);
        }
    }

    private static void requireOneNewAndTheSameNumber(Collection<Recorded> answers) {
        assertEquals(THREADS, answers.size());
        assertEquals(1, answers.stream().filter(Recorded::isNew).count());
        assertEquals(1, answers.stream().map(Recorded::sequence).distinct().count());
    }
}
