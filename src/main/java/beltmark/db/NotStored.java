package beltmark.db;

import org.jspecify.annotations.Nullable;

/**
 * The change was not acknowledged: the disk refused it, too many were waiting, or the database is closing. After a fault
 * of the disk it may still have been kept; sending it again with the same operation id settles that.
 */
public final class NotStored extends RuntimeException {

    private static final long serialVersionUID = 1;

    NotStored(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
