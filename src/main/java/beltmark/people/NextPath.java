package beltmark.people;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Where somebody wanted to go before sign-in: a path of this site, never another one.
 *
 * @param value the path with its query
 */
public record NextPath(String value) {

    private static final NextPath START = new NextPath("/today");

    /** {@return the path when it is one of this site, else the start page} */
    static NextPath of(@Nullable String asked) {
        return asked != null && isOwn(asked) && !asked.startsWith("/sign-in") ? new NextPath(asked) : START;
    }

    /** {@return the path when it is one of this site, also of the sign-in itself, else the start page} */
    static NextPath ofAnyPage(@Nullable String asked) {
        return asked != null && isOwn(asked) ? new NextPath(asked) : START;
    }

    private static boolean isOwn(String asked) {
        return asked.matches("/[\\x21-\\x7e]{0,500}") && !asked.startsWith("//") && asked.indexOf('\\') < 0;
    }

    /** {@return an address with this path as its query, as it is when there is nothing to remember} */
    public String after(String address) {
        return equals(START) ? address : address + "?next=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
