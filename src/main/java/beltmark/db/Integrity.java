package beltmark.db;

import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What SQLite itself says about the state of the file. */
public final class Integrity {

    private static final int PRIMARY_CODE = 0xff;
    private static final Set<Integer> DAMAGE =
            Set.of(SQLiteErrorCode.SQLITE_CORRUPT.code, SQLiteErrorCode.SQLITE_NOTADB.code);

    private static final String CHECK = "PRAGMA integrity_check(20)";

    private Integrity() {}

    /** {@return the first faults SQLite finds in its pages and indexes, in its own words; empty when there are none} */
    public static List<String> faults(Handle handle) {
        List<String> lines = handle.createQuery(CHECK).mapTo(String.class).list();
        return lines.equals(List.of("ok")) ? List.of() : lines;
    }

    /** {@return whether a query failed because the file is damaged, rather than out of reach} */
    public static boolean isDamage(Throwable fault) {
        SQLiteException cause = findCause(fault);
        return cause != null && DAMAGE.contains(primaryCode(cause));
    }

    /** {@return the fault of SQLite underneath, if there is one} */
    static @Nullable SQLiteException findCause(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                return sqlite;
            }
        }
        return null;
    }

    /** {@return the code without its detail, which is in the higher bytes} */
    static int primaryCode(SQLiteException fault) {
        return fault.getResultCode().code & PRIMARY_CODE;
    }
}
