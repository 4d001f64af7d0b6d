package beltmark;

import java.nio.file.Path;

/**
 * How a server is run; every default is an option of the command {@code serve}.
 *
 * @param host the address listened on
 * @param port the port, 0 for any free one
 * @param data the folder of the database and the keys
 * @param demo what an empty database is filled with
 * @param tls whether browsers reach the server through TLS, ended in front of it; cookies are then tied to it
 */
public record Config(String host, int port, Path data, Demo demo, boolean tls) {

    /** What an empty database is filled with. */
    public enum Demo {
        /** Nothing. */
        NONE,
        /** Invented people. */
        PEOPLE,
        /** Invented people and their past year. */
        PAST_YEAR
    }
}
