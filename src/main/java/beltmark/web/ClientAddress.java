package beltmark.web;

import io.javalin.http.Context;

/**
 * The network address a request comes from.
 *
 * @param behindProxy whether a proxy stands before the server, as with TLS; it then says whom it stands for
 */
public record ClientAddress(boolean behindProxy) {

    private static final String HEADER = "X-Forwarded-For";

    /** {@return the address; of several that proxies noted the last, which the nearest one saw itself} */
    public String of(Context ctx) {
        String noted = behindProxy ? ctx.header(HEADER) : null;
        return noted == null || noted.isBlank()
                ? ctx.ip()
                : noted.substring(noted.lastIndexOf(',') + 1).strip();
    }
}
