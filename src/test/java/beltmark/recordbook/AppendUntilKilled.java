package beltmark.recordbook;

import beltmark.db.Database;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;

/** Appends from several threads and prints each number as soon as it is acknowledged, until the process is killed. */
final class AppendUntilKilled {

    private static final int THREADS = 4;

    private AppendUntilKilled() {}

    /** Arguments: the data folder and the number of the first operation. */
    public static void main(String[] arguments) {
        Database database = Database.open(Path.of(arguments[0]));
        AtomicInteger operation = new AtomicInteger(Integer.parseInt(arguments[1]));
        for (int thread = 0; thread < THREADS; thread++) {
            new Thread(() -> append(database, operation)).start();
        }
    }

    private static void append(Database database, AtomicInteger operation) {
        while (true) {
            Entry entry = SampleBook.entry(operation.getAndIncrement());
            Recorded recorded = database.write(handle -> SampleBook.BOOK.append(handle, entry))
                    .join();
            System.out.println("stored " + recorded.sequence() + " " + entry.operation() + " .");
        }
    }
}
