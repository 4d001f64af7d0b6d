package beltmark.db;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The one connection that writes. It stays in the driver's automatic mode and says BEGIN and COMMIT itself: otherwise
 * the driver begins again after each commit and an idle writer would hold the write lock.
 */
final class WriteConnection implements AutoCloseable {

    /** Primary codes of faults of the statement; every other one may have undone the whole transaction. */
    private static final Set<Integer> FAULTS_OF_THE_CHANGE = Set.of(
            SQLiteErrorCode.SQLITE_ERROR.code,
            SQLiteErrorCode.SQLITE_CONSTRAINT.code,
            SQLiteErrorCode.SQLITE_MISMATCH.code,
            SQLiteErrorCode.SQLITE_TOOBIG.code,
            SQLiteErrorCode.SQLITE_RANGE.code);

    private final Connection connection;
    private final Jdbi jdbi;

    private WriteConnection(Connection connection) {
        this.connection = connection;
        this.jdbi = Jdbi.create(connection).installPlugin(new Columns());
    }

    static WriteConnection open(Connections connections) throws SQLException {
        return new WriteConnection(connections.getConnection());
    }

    /** Stores all changes that succeed, in one flush to the disk; throws when it must be taken that none was stored. */
    void commit(List<Change<?>> batch) throws SQLException {
        execute("BEGIN IMMEDIATE");
        for (Change<?> change : batch) {
            runApart(change);
        }
        execute("COMMIT");
    }

    private void runApart(Change<?> change) throws SQLException {
        execute("SAVEPOINT change");
        try (Handle handle = jdbi.open()) {
            change.runOn(handle);
        } catch (Throwable fault) {
            requireOfTheChange(fault);
            change.failWith(fault);
            execute("ROLLBACK TO change");
        }
        execute("RELEASE change");
    }

    private static void requireOfTheChange(Throwable fault) throws SQLException {
        SQLiteException cause = Integrity.findCause(fault);
        if (cause != null && !FAULTS_OF_THE_CHANGE.contains(Integrity.primaryCode(cause))) {
            throw cause;
        }
    }

    private void execute(String statement) throws SQLException {
        try (Statement prepared = connection.createStatement()) {
            prepared.execute(statement);
        }
    }

    /** Writes the log into the database file, so that closing leaves one file. */
    void checkpoint() throws SQLException {
        execute("PRAGMA wal_checkpoint(TRUNCATE)");
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
