package beltmark.db;

import org.jspecify.annotations.Nullable;

/** The data folder cannot be used; the message says why in a sentence for whoever starts the server. */
public final class CannotOpen extends RuntimeException {

    private static final long serialVersionUID = 1;

    CannotOpen(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
