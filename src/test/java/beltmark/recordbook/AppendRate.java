package beltmark.recordbook;

import beltmark.db.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Measures acknowledged appends a second: {@code java -cp ... beltmark.recordbook.AppendRate FOLDER}, on the disk that
 * records will be on.
 */
final class AppendRate {

    private static final int[] CALLERS = {1, 8, 64};
    private static final long SECONDS = 5;

    private AppendRate() {}

    public static void main(String[] arguments) throws IOException {
        Path parent = Path.of(arguments[0]);
        for (int callers : CALLERS) {
            Path folder = Files.createTempDirectory(parent, "append-rate");
            try (Database database = Database.open(folder)) {
                AtomicInteger operation = new AtomicInteger();
                run(database, operation, callers);
                report(callers, run(database, operation, callers));
                System.out.println(
                        "   " + database.read(SampleBook.BOOK::verify).head().sequence() + " verified");
            }
        }
    }

    private static long[] run(Database database, AtomicInteger operation, int callers) {
        ExecutorService threads = Executors.newFixedThreadPool(callers);
        long end = System.nanoTime() + SECONDS * 1_000_000_000L;
        List<CompletableFuture<List<Long>>> runs = new ArrayList<>();
        for (int caller = 0; caller < callers; caller++) {
            runs.add(CompletableFuture.supplyAsync(() -> append(database, operation, end), threads));
        }
        long[] nanoseconds = runs.stream()
                .flatMap(run -> run.join().stream())
                .mapToLong(Long::longValue)
                .toArray();
        threads.shutdown();
        return nanoseconds;
    }

    private static List<Long> append(Database database, AtomicInteger operation, long end) {
        List<Long> nanoseconds = new ArrayList<>();
        while (System.nanoTime() < end) {
            long start = System.nanoTime();
            Entry entry = SampleBook.entry(operation.getAndIncrement());
            database.write(handle -> SampleBook.BOOK.append(handle, entry)).join();
            nanoseconds.add(System.nanoTime() - start);
        }
        return nanoseconds;
    }

    private static void report(int callers, long[] nanoseconds) {
        Arrays.sort(nanoseconds);
        System.out.printf(
                "%d callers: %d/s, median %.2f ms, p99 %.2f ms%n",
                callers,
                nanoseconds.length / SECONDS,
                nanoseconds[nanoseconds.length / 2] / 1e6,
                nanoseconds[nanoseconds.length * 99 / 100] / 1e6);
    }
}
