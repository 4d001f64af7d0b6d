package beltmark;

import java.nio.file.Path;

/**
 * How a server is run; every default is an option of the command {@code serve}.
 *
 * @param host the address listened on
 * @param port the port, 0 for any free one
 * @param data the folder of the database and the keys
 * @param demo whether an empty database is filled with invented people
 * @param tls whether browsers reach the server through TLS, ended in front of it; cookies are then tied to it
 */
public record Config(String host, int port, Path data, boolean demo, boolean tls) {}
