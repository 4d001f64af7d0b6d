package beltmark.db;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The one thread that writes. It takes every change that is waiting, does each under its own savepoint, and flushes all
 * of them to the disk with one commit: while one flush runs, the next batch gathers. After a fault of the disk the
 * connection is closed and a new one opened, because SQLite may still store what it reported as failed on the old one.
 */
final class Writer implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Writer.class);
    private static final long LONGEST_FINISH_SECONDS = 10;

    private final Connections connections;
    private final WriteQueue queue = new WriteQueue();
    // Not on the writer's thread: whatever hangs on a promise must not hold up the next batch. A fork-join pool,
    // because
    // it adds a thread when one of those waits for another change.
    private final ForkJoinPool messengers = new ForkJoinPool(
            Math.max(2, Runtime.getRuntime().availableProcessors()),
            ForkJoinPool.defaultForkJoinWorkerThreadFactory,
            null,
            true);
    private final Thread thread = new Thread(this::run, "beltmark-writer");

    private @Nullable WriteConnection connection;
    private volatile @Nullable String fault;

    private Writer(Connections connections, WriteConnection connection) {
        this.connections = connections;
        this.connection = connection;
        thread.setDaemon(true);
    }

    static Writer start(Connections connections) throws SQLException {
        Writer writer = new Writer(connections, WriteConnection.open(connections));
        writer.thread.start();
        return writer;
    }

    <T extends @Nullable Object> CompletableFuture<T> write(Function<Handle, T> work) {
        Change<T> change = new Change<>(work);
        try {
            queue.add(change);
        } catch (NotStored full) {
            change.refuse(full);
        }
        return change.promise();
    }

    /** {@return why the last batch could not be stored, if it could not} */
    Optional<String> fault() {
        return Optional.ofNullable(fault);
    }

    private void run() {
        try {
            for (List<Change<?>> batch = queue.takeBatch(); !batch.isEmpty(); batch = queue.takeBatch()) {
                store(batch);
            }
        } catch (InterruptedException e) {
            // nobody interrupts this thread; were it done, no change could be acknowledged any more
            LOG.error("the writer was interrupted", e);
        }
    }

    private void store(List<Change<?>> batch) {
        try {
            open().commit(batch);
            fault = null;
            batch.forEach(change -> messengers.execute(change::keepPromise));
        } catch (Throwable e) {
            // also an Error: without this thread nothing would ever be answered again
            LOG.error("{} changes were not stored", batch.size(), e);
            fault = String.valueOf(e.getMessage());
            drop();
            NotStored notStored = new NotStored("not stored: " + e.getMessage(), e);
            batch.forEach(change -> messengers.execute(() -> change.refuse(notStored)));
        }
    }

    private WriteConnection open() throws SQLException {
        WriteConnection open = connection;
        if (open == null) {
            open = WriteConnection.open(connections);
            connection = open;
        }
        return open;
    }

    private void drop() {
        WriteConnection dropped = connection;
        connection = null;
        try {
            if (dropped != null) {
                dropped.close();
            }
        } catch (SQLException e) {
            LOG.warn("the write connection did not close cleanly", e);
        }
    }

    /** Stores and acknowledges what waits and takes no more in; the connection stays open until {@link #close()}. */
    void finish() {
        queue.close();
        try {
            thread.join();
            messengers.shutdown();
            if (!messengers.awaitTermination(LONGEST_FINISH_SECONDS, TimeUnit.SECONDS)) {
                LOG.warn("some acknowledgements were still under way when the database closed");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Closes the connection, as the last one to the file. */
    @Override
    public void close() throws SQLException {
        try (WriteConnection last = open()) {
            last.checkpoint();
        }
    }
}
