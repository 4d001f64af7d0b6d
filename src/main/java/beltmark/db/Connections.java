package beltmark.db;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/** Opens connections to one database file, each with the settings it must have. */
final class Connections extends SQLiteDataSource {

    private final Map<String, String> pragmas;

    private Connections(Path file, SQLiteConfig config, Map<String, String> pragmas) {
        super(config);
        this.pragmas = pragmas;
        setUrl("jdbc:sqlite:" + file.toAbsolutePath());
    }

    /** {@return connections that write; the file must be there} */
    static Connections writing(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        return new Connections(file, config, Pragmas.ofWriter());
    }

    /** {@return connections that only read, beside a writer} */
    static Connections reading(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        return new Connections(file, config, Pragmas.ofReader());
    }

    /** {@return connections that only read but, with no server running, clear the log away when they close} */
    static Connections inspecting(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        return new Connections(file, config, Pragmas.ofReader());
    }

    @Override
    public SQLiteConnection getConnection(@Nullable String user, @Nullable String password) throws SQLException {
        SQLiteConnection connection = super.getConnection(user, password);
        try {
            Pragmas.apply(connection, pragmas);
            return connection;
        } catch (SQLException | RuntimeException e) {
            closeAfter(e, connection);
            throw e;
        }
    }

    private static void closeAfter(Exception fault, Connection connection) {
        try {
            connection.close();
        } catch (SQLException e) {
            fault.addSuppressed(e);
        }
    }
}
