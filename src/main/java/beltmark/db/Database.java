package beltmark.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/**
 * The database of one server: {@code beltmark.db} in its data folder. Any thread may read and write; reads run side by
 * side on connections that cannot write, changes run one after another on the writer's thread.
 */
public final class Database implements AutoCloseable {

    private static final long LONGEST_WAIT_FOR_A_READER_MS = 5_000;

    private final DataFolder folder;
    private final Writer writer;
    private final HikariDataSource pool;
    private final Jdbi readers;
    private final AtomicBoolean closed = new AtomicBoolean();

    private Database(DataFolder folder, Writer writer) {
        this.folder = folder;
        this.writer = writer;
        this.pool = pool(folder.databaseFile());
        this.readers = Jdbi.create(pool).installPlugin(new Columns());
    }

    /**
     * Opens the database, makes it if it is not there, and brings its tables up to date.
     *
     * @throws CannotOpen when another server has the folder open, or it cannot be used
     */
    public static Database open(Path dataFolder) {
        DataFolder folder = DataFolder.open(dataFolder);
        try {
            Connections connections = Connections.writing(folder.databaseFile());
            Migrations.run(connections);
            return new Database(folder, Writer.start(connections));
        } catch (SQLException e) {
            folder.close();
            throw new CannotOpen("The database in " + dataFolder + " cannot be opened: " + e.getMessage(), e);
        } catch (RuntimeException e) {
            folder.close();
            throw e;
        }
    }

    /**
     * Reads the database of a folder without locking or migrating it, beside a running server or without one.
     *
     * @throws CannotOpen when there is no database
     */
    public static <T extends @Nullable Object> T inspect(Path dataFolder, Function<Handle, T> query) {
        Path file = DataFolder.databaseFile(dataFolder);
        if (!Files.isRegularFile(file)) {
            throw new CannotOpen("There is no database in " + dataFolder + ".", null);
        }
        return Jdbi.create(Connections.inspecting(file))
                .installPlugin(new Columns())
                .inTransaction(query::apply);
    }

    /** {@return what the query finds, all of it as of one moment} */
    public <T extends @Nullable Object> T read(Function<Handle, T> query) {
        return readers.inTransaction(query::apply);
    }

    /**
     * Hands a change to the writer. The change must not begin or end transactions, nor keep its handle.
     *
     * @return the result, once it is on the disk; or what the change threw, then nothing of it was stored; or
     *     {@link NotStored}
     */
    public <T extends @Nullable Object> CompletableFuture<T> write(Function<Handle, T> change) {
        return writer.write(change);
    }

    /** {@return why changes cannot be stored at present; empty when the last batch was} */
    public Optional<String> fault() {
        return writer.fault();
    }

    private static HikariDataSource pool(Path file) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("beltmark-readers");
        config.setDataSource(Connections.reading(file));
        config.setReadOnly(true);
        config.setMaximumPoolSize(Math.max(4, 2 * Runtime.getRuntime().availableProcessors()));
        config.setConnectionTimeout(LONGEST_WAIT_FOR_A_READER_MS);
        config.setMaxLifetime(0);
        return new HikariDataSource(config);
    }

    /** Stores what waits, then closes every connection; the log is merged into the one file. */
    @Override
    public void close() {
        if (closed.getAndSet(true)) {
            return;
        }
        try (folder;
                writer) {
            writer.finish();
            pool.close();
        } catch (SQLException e) {
            throw new IllegalStateException("the database did not close cleanly", e);
        }
    }
}
